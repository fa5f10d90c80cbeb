/* Broken catalogs: every fault is named with file, line and column, and all of them in one run. */
#include "support.h"

#include <string.h>
#include <unistd.h>

#include "sawbill/catalog.h"
#include "sawbill/text.h"

/* A whole set of catalogs, as small as it can be. */
struct file {
    const char *name, *text;
};
static const struct file SMALL[] = {
    {"design_values.csv",
     "species,grade,width_in,Fb,Fv,Fc_perp,Fc,E,Emin,G,units,edition,status,source,seen\n"
     "Douglas Fir-Larch,No.2,,900,180,625,1350,1600000,580000,0.5,psi,NDS 2018,reference,x,source\n"
     "Southern Pine,No.2,10,800,175,565,1300,1400000,510000,0.55,psi,NDS 2018,reference,x,source\n"},
    {"members.csv", "code,material,wood,use,size,ply width,depth,design row,most plies,weight,moisture,source\n"
                    "DFL2-2X10,Douglas Fir-Larch,sawn,beam; joist,2x10,1-1/2 in,9-1/4 in,Douglas Fir-Larch No.2,4,3.3 "
                    "plf,S-DRY,PS 20\n"},
    {"prices.csv", "item,unit,length,price,supplier,date\nDFL2-2X10,each,12 ft,20.00,Yard,2026-10-05\n"},
    {"hangers.csv",
     "code,kind,width from,width to,depth from,depth to,seat,carrier nail,carrier count,load at 1.0,source\n"
     "H1,hanger,1-1/2 in,1-9/16 in,7 in,9-1/4 in,2 in,N1,10,1000,invented\n"},
    {"fasteners.csv", "code,kind,diameter,length,source\nN1,common nail,0.148 in,3 in,ASTM F1667\n"},
    {"labor.csv", "task,trade,per,hours low,hours likely,hours high,crew,order,source\nhang,carpenter,joist "
                  "end,0.1,0.2,0.4,2,10,own\n"},
    {"trades.csv", "trade,wage,burden\ncarpenter,34.00,32 %\n"},
    {"assemblies.csv", "assembly,per,item,task,count\njoists,joist end,,hang,1\n"},
    {"suppliers.csv", "name,delivery\nYard,50\n"},
    {"forgotten.csv", "line,priced by,price,class\nparking,assembly/parking,,\ntest,,140.00,subs\n"},
    {"debris.csv", "debris,per,solid,fluff,weight,source\nboard,square foot of gypsum board,0.0417,2.6,2 lb,own\n"},
    {"conditions.csv", "condition,task,factor,from weight,source\n"},
};
enum { FILES = sizeof SMALL / sizeof *SMALL };

struct folder {
    char path[64];
    struct diags diags;
    struct catalog *catalog;
};

static void write_file(const char *folder, const char *name, const char *text)
{
    char path[128];
    snprintf(path, sizeof path, "%s/%s", folder, name);
    FILE *file = fopen(path, "wb");
    assert_non_null(file);
    assert_int_equal(fputs(text, file) < 0, 0);
    assert_int_equal(fclose(file), 0);
}

static void remove_folder(const struct folder *folder)
{
    char path[128];
    for (size_t i = 0; i < FILES; i++) {
        snprintf(path, sizeof path, "%s/%s", folder->path, SMALL[i].name);
        (void)unlink(path); /* a test may have left it out */
    }
    snprintf(path, sizeof path, "%s/shop.csv", folder->path);
    (void)unlink(path); /* few tests write it */
    assert_int_equal(rmdir(folder->path), 0);
}

/* The small set with one file's text in place of its own (NULL: the file is missing), and a shop stock or NULL. */
static struct folder read_with(void **state, const char *name, const char *text, const char *shop)
{
    struct folder folder = {.diags = {.arena = *state}};
    snprintf(folder.path, sizeof folder.path, "/tmp/sawbill-catalog-XXXXXX");
    assert_non_null(mkdtemp(folder.path));
    for (size_t i = 0; i < FILES; i++) {
        bool is_it = name && strcmp(SMALL[i].name, name) == 0;
        if (!is_it || text)
            write_file(folder.path, SMALL[i].name, is_it ? text : SMALL[i].text);
    }
    if (shop)
        write_file(folder.path, "shop.csv", shop);
    const char *shop_path = shop ? arena_printf(*state, "%s/shop.csv", folder.path) : NULL;
    folder.catalog = catalog_read(*state, folder.path, shop_path, &folder.diags);
    diag_sort(&folder.diags);
    remove_folder(&folder);
    return folder;
}

/* The messages without the folder's name, a line each. */
static const char *said(void **state, const struct folder *folder)
{
    struct buffer all = {.arena = *state};
    size_t skip = strlen(folder->path) + 1;
    for (size_t i = 0; i < folder->diags.count; i++)
        buffer_printf(&all, "%s\n", diag_line(*state, &folder->diags.item[i]) + skip);
    return buffer_text(&all);
}

static void expect(void **state, const char *name, const char *text, const char *want)
{
    struct folder folder = read_with(state, name, text, NULL);
    assert_string_equal(said(state, &folder), want);
}

static void test_small_set_is_good(void **state)
{
    struct folder folder =
        read_with(state, NULL, NULL, "member,length,count,book value\nDFL2-2X10,9 ft 4 in,2,11.50\n");
    assert_string_equal(said(state, &folder), "");
    assert_int_equal(folder.catalog->shop_count, 1);
    assert_ptr_equal(folder.catalog->shop[0].member, &folder.catalog->members[0]);
    assert_int_equal(folder.catalog->shop[0].book_value, 11 * MONEY_DOLLAR + 50 * MONEY_CENT);
    const struct hanger *hanger = catalog_hanger(folder.catalog, "H1");
    assert_string_equal(hanger->item, "H1"); /* an empty item is the code */
    assert_near(hanger->load[0], 1000, 0);
    assert_true(isnan(hanger->load[1]) && isnan(hanger->uplift)); /* empty is not zero */
    assert_int_equal(folder.catalog->prices[0].pack, DECIMAL_ONE);
    assert_false(folder.catalog->suppliers[0].has_tax);
}

/* A file with a fault of its own does not make every reference to it a fault. */
static void test_files(void **state)
{
    expect(state, "trades.csv", NULL, "trades.csv: stop[F001]: catalog file: no such file\n");
    expect(state, "suppliers.csv", "",
           "suppliers.csv: stop[C001]: the file is empty; its first row names the columns\n");
    struct diags diags = {.arena = *state};
    (void)catalog_read(*state, "/nowhere/at all", NULL, &diags);
    assert_int_equal(diags.count, 1);
    assert_string_equal(diag_line(*state, &diags.item[0]), "/nowhere/at all: stop[F001]: no such folder of catalogs");
}

static void test_columns(void **state)
{
    expect(state, "trades.csv", "trade,wages,burden,burden,\ncarpenter,34.00,32 %,32 %,\n",
           "trades.csv:1:1: stop[C001]: column 'wage' is missing\n"
           "trades.csv:1:7: stop[C001]: unknown column 'wages'; did you mean 'wage'?\n"
           "trades.csv:1:20: stop[C001]: column 'burden' stands twice\n"
           "trades.csv:1:27: stop[C001]: column 5 has no name; delete the empty column\n");
    expect(state, "trades.csv", "trade;wage;burden\ncarpenter;34.00;32 %\n",
           "trades.csv:1:1: stop[C001]: columns are parted by ';'; save the file with commas\n");
    expect(state, "trades.csv", "Trade , WAGE,Burden\ncarpenter,34.00,32 %\n", ""); /* names fold */
}

static void test_cells(void **state)
{
    expect(state, "trades.csv", "trade,wage,burden\ncarpenter,34.00,0.32\n4helper,\"1,23.00\",32 %\nboss,,32 %\n",
           "trades.csv:2:17: stop[C002]: '0.32' in column 'burden': a percentage needs its sign, as 12 %: a bare "
           "number could mean 12 or 0.12; write it like '32 %'\n"
           "trades.csv:3:1: stop[C002]: '4helper' in column 'trade': a code starts with a letter, or a spreadsheet "
           "program "
           "makes a number or a date of it; write it like 'carpenter'\n"
           "trades.csv:3:9: stop[C002]: '1,23.00' in column 'wage': a comma that does not part thousands: the decimal "
           "sign is a point; write "
           "it "
           "like '34.00'\n"
           "trades.csv:4:6: stop[C002]: empty cell in column 'wage'; write it like '34.00'\n");
    expect(state, "fasteners.csv",
           "code,kind,diameter,length,source\nN1,common nail,0.148,3 in,x\nN2,box nail,12 in,3 in,x\n",
           "fasteners.csv:2:16: stop[C002]: '0.148' in column 'diameter': no unit: feet or inches? write it out, as 14 "
           "ft, 78 1/2 in or 4430 mm\n"
           "fasteners.csv:3:13: stop[C002]: '12 in' in column 'diameter': out of range, 0.03 to 2 in; write it like "
           "'0.162 "
           "in'\n");
    expect(
        state, "labor.csv",
        "task,trade,per,hours low,hours likely,hours high,crew,order,source\nhang,carpenter,joist end,0.1,0.2 "
        "hours,4e,1.5,"
        "10,own\n",
        "labor.csv:2:40: stop[C002]: '4e' in column 'hours high': something follows the number; write it like '0.4'\n"
        "labor.csv:2:43: stop[C002]: '1.5' in column 'crew': a whole number is meant; write it like '2'\n");
}

/* What a spreadsheet program does to a cell that looks like a date or a number. */
static void test_spreadsheet_damage(void **state)
{
    static const char *const DATES[] = {"2-Apr", "2-Apr-26", "Apr-02", "Apr-1926", "4/2/2026", "1900-01-02"};
    for (size_t i = 0; i < sizeof DATES / sizeof *DATES; i++)
        expect(
            state, "trades.csv", arena_printf(*state, "trade,wage,burden\n%s,34.00,32 %%\ncarpenter,34,0\n", DATES[i]),
            arena_printf(*state,
                         "trades.csv:2:1: stop[C002]: '%s' in column 'trade': a spreadsheet program has made a date of "
                         "it; write it like 'carpenter'\n",
                         DATES[i]));
    expect(state, "trades.csv", "trade,wage,burden\n1.5E+02,34.00,#REF!\ncarpenter,####,0\n",
           "trades.csv:2:1: stop[C002]: '1.5E+02' in column 'trade': a spreadsheet program has made a rounded number "
           "of it; "
           "write it like 'carpenter'\n"
           "trades.csv:2:15: stop[C002]: '#REF!' in column 'burden': it is an error mark of a spreadsheet program; "
           "write it "
           "like '32 %'\n"
           "trades.csv:3:11: stop[C002]: '####' in column 'wage': it is an error mark of a spreadsheet program; write "
           "it like "
           "'34.00'\n");
    expect(state, "prices.csv", "item,unit,length,price,supplier,date\nDFL2-2X10,each,12 ft,20.00,Yard,10/5/2026\n",
           "prices.csv:2:33: stop[C002]: '10/5/2026' in column 'date': a spreadsheet program has turned the date "
           "round; format "
           "the column as YYYY-MM-DD; write it like '2026-10-05'\n");
    /* words that only look so are left alone */
    expect(state, "trades.csv", "trade,wage,burden,note\ncarpenter,34,0,Mar-tin\nmay,20,0,2x4\nE5,20,0,#1 man\n", "");
}

static void test_words(void **state)
{
    expect(
        state, "members.csv",
        "code,material,wood,use,size,ply width,depth,design row,most plies,weight,moisture,source\n"
        "A1,x,swan,beam joist stood,2x10,1-1/2 in,9-1/4 in,Douglas Fir-Larch No.2,4,3.3,S-DRY,x\n",
        "members.csv:2:6: stop[C002]: 'swan' in column 'wood' is not one of: sawn, LVL, PSL, LSL, glulam; did you mean "
        "'sawn'?\n"
        "members.csv:2:11: stop[C002]: 'stood' in column 'use' is not one of: beam, post, plate, stud, joist, block; "
        "did "
        "you mean 'stud'?\n");
}

static void test_given_twice(void **state)
{
    expect(state, "trades.csv", "trade,wage,burden\ncarpenter,34,0\nhelper,20,0\nCarpenter,35,0\n",
           "trades.csv:4:1: stop[C003]: 'Carpenter' is given twice; first at line 2\n");
    /* one length in two spellings is one length; another pack is another row */
    expect(state, "prices.csv",
           "item,unit,length,pack,price,supplier,date\nDFL2-2X10,each,12 ft,,20,Yard,2026-10-05\nDFL2-2X10,each,144 "
           "in,,21,Yard,2026-10-05\nN1,each,,50,20,Yard,2026-10-05\nN1,each,,250,90,Yard,2026-10-05\n",
           "prices.csv:3:1: stop[C003]: 'DFL2-2X10' is given twice with the same 'length', 'pack', 'supplier'; first "
           "at line "
           "2\n");
}

static void test_references(void **state)
{
    expect(
        state, "labor.csv",
        "task,trade,per,hours low,hours likely,hours high,crew,order,source\nhnag,carpentor,joist "
        "end,0.1,0.2,0.4,2,10,own\n",
        "assemblies.csv:2:19: stop[C004]: 'hang' in column 'task' is not in labor.csv; did you mean 'hnag'?\n"
        "labor.csv:2:6: stop[C004]: 'carpentor' in column 'trade' is not in trades.csv; did you mean 'carpenter'?\n");
    expect(state, "members.csv",
           "code,material,wood,use,size,ply width,depth,design row,most plies,weight,moisture,source\n"
           "A1,x,sawn,beam,2x10,1-1/2 in,9-1/4 in,Douglas Fir-Larsh No.2,4,3.3,S-DRY,x\n"
           "A2,x,sawn,beam,2x12,1-1/2 in,11-1/4 in,Southern Pine No.2,4,3.3,S-DRY,x\n"
           "A3,x,sawn,beam,10 by 2,1-1/2 in,9-1/4 in,Southern Pine No.2,4,3.3,S-DRY,x\n",
           "members.csv:2:39: stop[C004]: 'Douglas Fir-Larsh No.2' in column 'design row' is no species and grade of "
           "design_values.csv; did you mean 'Douglas Fir-Larch No.2'?\n"
           "members.csv:3:40: stop[C004]: 'Southern Pine No.2' in column 'design row' is no species and grade of "
           "design_values.csv for a width of 12 in\n"
           "members.csv:4:16: stop[C002]: '10 by 2' in column 'size': the nominal size of sawn wood is meant; write it "
           "like "
           "'2x10'\n");
    expect(state, "hangers.csv",
           "code,kind,width from,width to,depth from,depth to,seat,carrier nail,carrier count,load at 1.0,source\n"
           "H1,hanger,1-1/2 in,1-9/16 in,7 in,9-1/4 in,2 in,N2,10,1000,x\nH2,hanger,2 in,1 in,,9 in,2 in,,4,,x\n",
           "hangers.csv:2:49: stop[C004]: 'N2' in column 'carrier nail' is not in fasteners.csv; did you mean 'N1'?\n"
           "hangers.csv:3:11: stop[C002]: 'width from' is greater than 'width to'\n"
           "hangers.csv:3:21: stop[C002]: a hanger needs 'depth from'\n"
           "hangers.csv:3:32: stop[C002]: nails are counted but 'carrier nail' is empty\n"
           "hangers.csv:3:35: stop[C002]: no load is given; without one it holds nothing\n");
    struct folder folder = read_with(state, NULL, NULL, "member,length,count,book value\nDFL2-2X12,9 ft,2,11.50\n");
    assert_string_equal(said(state, &folder), "shop.csv:2:1: stop[C004]: 'DFL2-2X12' in column 'member' is not in "
                                              "members.csv; did you mean 'DFL2-2X10'?\n");
}

static void test_assemblies(void **state)
{
    expect(
        state, "assemblies.csv",
        "assembly,per,item,task,count\na,joist and,,hang,1\nb,square foot of wal out,,hang,1\nc,square foot of "
        "plaster,,hang,1\nd,gallon,,hang,1\ne,job,DFL2-2X10,hang,1\nf,job,,,1\ng,job,NAILS,,1\n",
        "assemblies.csv:2:3: stop[C004]: 'joist and' in column 'per' is nothing that the takeoff counts; did you mean "
        "'joist end'?\n"
        "assemblies.csv:3:3: stop[C004]: 'square foot of wal out' in column 'per' is nothing that the takeoff counts; "
        "did "
        "you mean 'square foot of wall out'?\n"
        "assemblies.csv:5:3: stop[C004]: 'gallon' in column 'per' is nothing that the takeoff counts; the manual lists "
        "the "
        "words\n"
        "assemblies.csv:6:7: stop[C002]: a row has an item or a task, not both\n"
        "assemblies.csv:7:7: stop[C002]: a row needs an item or a task\n"
        "assemblies.csv:8:7: stop[C004]: 'NAILS' in column 'item' is not in prices.csv\n");
}

/* A folder may lack them; a task that is not there would never be multiplied. */
static void test_conditions(void **state)
{
    struct folder with =
        read_with(state, "conditions.csv",
                  "condition,task,factor,from weight,source\ncrawl space,hang,1.5,80 lb,own figure\n", NULL);
    assert_int_equal(with.catalog->condition_count, 1);
    assert_int_equal(with.catalog->conditions[0].factor, 15000);
    assert_near(with.catalog->conditions[0].from_lb, 80, 0);
    struct folder without = read_with(state, "conditions.csv", NULL, NULL);
    assert_int_equal(without.diags.count, 0);
    assert_int_equal(without.catalog->condition_count, 0);
    expect(state, "conditions.csv",
           "condition,task,factor,source\ncrawl,hnag,1.5,own\ncrawl,hang,0,own\ncrawl,hang,1.2,own\n",
           "conditions.csv:2:7: stop[C004]: 'hnag' in column 'task' is not in labor.csv; did you mean 'hang'?\n"
           "conditions.csv:3:12: stop[C002]: '0' in column 'factor': out of range, 0.1 to 10; write it like '1.25'\n"
           "conditions.csv:4:1: stop[C003]: 'crawl' is given twice with the same 'task'; first at line 3\n");
}

static void test_forgotten(void **state)
{
    struct folder with = read_with(state, NULL, NULL, NULL);
    assert_int_equal(with.catalog->forgotten_count, 2);
    assert_false(with.catalog->forgotten[0].has_price);
    assert_true(with.catalog->forgotten[1].has_price);
    assert_int_equal(with.catalog->forgotten[1].price, 140 * MONEY_DOLLAR);
    struct folder without = read_with(state, "forgotten.csv", NULL, NULL);
    assert_int_equal(without.diags.count, 0);
    assert_int_equal(without.catalog->forgotten_count, 0);
    expect(state, "forgotten.csv", "line,price,class\nparking,12.00,\ntest,1,subs\nTest,2,fees\n",
           "forgotten.csv:2:9: stop[C002]: a price needs its 'class'\n"
           "forgotten.csv:4:1: stop[C003]: 'Test' is given twice; first at line 3\n");
}

static void test_debris(void **state)
{
    struct folder with = read_with(state, NULL, NULL, NULL);
    assert_int_equal(with.catalog->debris_count, 1);
    assert_int_equal(with.catalog->debris[0].solid, 417);
    assert_int_equal(with.catalog->debris[0].pounds, 20000);
    struct folder without = read_with(state, "debris.csv", NULL, NULL);
    assert_int_equal(without.diags.count, 0);
    assert_int_equal(without.catalog->debris_count, 0);
    expect(state, "debris.csv", "debris,per,solid,fluff,weight,source\na,gallon,1,2,3 lb,own\nb,job,1,0.5,3 lb,own\n",
           "debris.csv:2:3: stop[C004]: 'gallon' in column 'per' is nothing that the takeoff counts; the manual lists "
           "the words\n"
           "debris.csv:3:9: stop[C002]: '0.5' in column 'fluff': out of range, 1 to 20; write it like '2.6'\n");
}

static void test_prices(void **state)
{
    expect(state, "prices.csv",
           "item,unit,length,increment,least,most,cut charge,pack,price,supplier,date\n"
           "A,ft,12 ft,2 ft,8 ft,40 ft,,,8,Yard,2026-10-05\n"
           "B,ft,,2 ft,,40 ft,,,8,Yard,2026-10-05\n"
           "C,ft,,2 ft,40 ft,8 ft,,,8,Yrad,2026-10-05\n"
           "D,each,,,,,5,,8,Yard,2026-10-05\n"
           "E,each,,,,,,50,8,Yard,2026-10-05\n"
           "E,lb,,,,,,5,8,Yard,2026-10-05\n",
           "prices.csv:2:6: stop[C002]: a row is sold by the piece ('length') or by the foot ('increment'), not both\n"
           "prices.csv:3:7: stop[C002]: sold by the foot needs all of 'increment', 'least' and 'most'\n"
           "prices.csv:4:12: stop[C002]: 'least' is greater than 'most'\n"
           "prices.csv:4:27: stop[C004]: 'Yrad' in column 'supplier' is not in suppliers.csv; did you mean 'Yard'?\n"
           "prices.csv:5:12: stop[C002]: a cut charge is for what is sold by the foot; give 'increment'\n"
           "prices.csv:7:3: stop[C004]: 'E' is sold by 'lb' here and by 'each' at line 6; one item has one unit\n");
}

/* Whatever has no nominal size has no board feet, and no price by the thousand of them. */
static void test_by_the_thousand(void **state)
{
    expect(state, "prices.csv",
           "item,unit,length,increment,least,most,pack,price,supplier,date\n"
           "DFL2-2X10,MBF,12 ft,,,,,640,Yard,2026-10-05\n"
           "DFL2-2X10,each,14 ft,,,,,16,Yard,2026-10-05\n"
           "DFL2-2X10,mbf,,,,,,640,Yard,2026-10-05\n"
           "DFL2-2X10,MBF,16 ft,,,,10,640,Yard,2026-10-05\n"
           "GUTTER,MBF,12 ft,,,,,640,Yard,2026-10-05\n",
           "prices.csv:4:11: stop[C002]: a price by the thousand board feet needs a 'length' or an 'increment'\n"
           "prices.csv:4:11: stop[C004]: 'DFL2-2X10' is sold by 'mbf' here and by 'each' at line 2; one item has one "
           "unit\n"
           "prices.csv:5:24: stop[C002]: 'pack' is 1 for what is sold by the thousand board feet\n"
           "prices.csv:6:8: stop[C002]: 'GUTTER' is no sawn member of members.csv with a nominal size like '2x10', so "
           "it has no board feet; price it by the piece or by the foot\n");
}

/* The row is read into the price of a piece, of a foot: 2 x 10 / 12 board feet a foot, so $640.00 a thousand are
 * $12.80 for the 20 board feet of 12 ft, $17.0667 for the 26.67 of 16 ft, $1.0667 for a foot.  Own arithmetic. */
static void test_thousand_read(void **state)
{
    struct folder folder = read_with(state, "prices.csv",
                                     "item,unit,length,price,supplier,date,note\n"
                                     "DFL2-2X10,MBF,12 ft,640,Yard,2026-10-05,\n"
                                     "DFL2-2X10,mbf,16 ft,640,Yard,2026-10-05,quote\n",
                                     NULL);
    assert_string_equal(said(state, &folder), "");
    const struct price *price = folder.catalog->prices;
    assert_int_equal(price[0].price, 128000);
    assert_string_equal(price[0].note, "MBF 640.00: 20 board feet");
    assert_string_equal(price[0].unit, "each");
    assert_int_equal(price[1].price, 170667);
    assert_string_equal(price[1].note, "MBF 640.00: 26.67 board feet; quote");
    folder = read_with(state, "prices.csv",
                       "item,unit,increment,least,most,cut charge,price,supplier,date\n"
                       "DFL2-2X10,MBF,2 ft,8 ft,20 ft,1.50,640,Yard,2026-10-05\n",
                       NULL);
    assert_string_equal(said(state, &folder), "");
    price = folder.catalog->prices;
    assert_int_equal(price->price, 10667);
    assert_int_equal(price->cut_charge, 15000);
    assert_string_equal(price->note, "MBF 640.00: 1.67 board feet a foot");
    assert_string_equal(price->unit, "ft");
}

static void test_actual_length(void **state)
{
    expect(state, "prices.csv",
           "item,unit,length,actual length,increment,least,most,pack,price,supplier,date\n"
           "A,each,8 ft,96-1/2 in,,,,,8,Yard,2026-10-05\n"
           "B,ft,,96-1/2 in,2 ft,8 ft,40 ft,,8,Yard,2026-10-05\n",
           "prices.csv:3:7: stop[C002]: 'actual length' is of what is sold by the piece; give its 'length'\n");
}

static void test_cell_count(void **state)
{
    expect(state, "trades.csv", "trade,wage,burden\ncarpenter,34\nhelper,1,234.00,32 %\n",
           "trades.csv:2:1: stop[C005]: 2 cells where the header has 3 columns\n"
           "trades.csv:3:1: stop[C005]: 4 cells where the header has 3 columns; a comma inside a cell needs quotes "
           "around the "
           "cell\n");
}

/* Any bytes in any file: messages, never a crash.  The bytes are a fixed sequence (xorshift), not random. */
static void test_garbage(void **state)
{
    static const char ALPHABET[] = "abc,,\"\"\n\r0129.-/ %$xX;#=in ft";
    uint32_t seed = 2463534242U;
    for (int round = 0; round < 60; round++) {
        char text[400];
        for (size_t i = 0; i + 1 < sizeof text; i++) {
            seed ^= seed << 13;
            seed ^= seed >> 17;
            seed ^= seed << 5;
            text[i] = ALPHABET[seed % (sizeof ALPHABET - 1)];
        }
        text[sizeof text - 1] = '\0';
        const struct file *file = &SMALL[(size_t)round % FILES];
        size_t header = strcspn(file->text, "\n") + 1;
        const char *whole = arena_printf(*state, "%.*s%s", (int)header, file->text, text);
        struct folder folder = read_with(state, file->name, round % 2 ? whole : text, NULL);
        assert_true(diag_count(&folder.diags, DIAG_STOP) > 0);
    }
}

#define TEST(name) cmocka_unit_test_setup_teardown(name, support_setup, support_teardown)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(test_small_set_is_good),  TEST(test_files),         TEST(test_columns),     TEST(test_cells),
        TEST(test_spreadsheet_damage), TEST(test_words),         TEST(test_given_twice), TEST(test_references),
        TEST(test_conditions),         TEST(test_assemblies),    TEST(test_prices),      TEST(test_actual_length),
        TEST(test_cell_count),         TEST(test_garbage),       TEST(test_forgotten),   TEST(test_debris),
        TEST(test_by_the_thousand),    TEST(test_thousand_read),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
