#include <getopt.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include "cli.h"
#include "sawbill/text.h"

struct command {
    const char *name, *arguments, *help;
    command_fn *run;
    size_t least, most; /* arguments */
    bool client;        /* takes --client */
    bool cuts;          /* takes the options of cuts */
};

static const struct command commands[] = {
    {"bid", "JOB", "size, count, cut and price the job; write the workbook and print the bid", command_bid, 1, 1, true,
     false},
    {"check", "JOB", "show the messages, the load path and every check", command_check, 1, 1, false, false},
    {"compare", "JOB", "show the members that pass with the whole job's price, and why the others fail",
     command_compare, 1, 1, false, false},
    {"cuts", "JOB", "show the cut plan, stick by stick; with --stock, of a bare list of pieces", command_cuts, 1, 1,
     false, true},
    {"takeoff", "JOB", "show every line that is bought, cut and done, and how it was counted", command_takeoff, 1, 1,
     false, false},
    {"order", "JOB", "show what to buy, by supplier", command_order, 1, 1, false, false},
    {"field", "JOB", "show what the crew works from: stop box, shores, cut lines, tape strip, hang order",
     command_field, 1, 1, false, false},
    {"keys", "[KIND]", "list the keys of a job file", command_keys, 0, 1, false, false},
    {"new", "[FILE]", "write a commented job file to start from", command_new, 0, 1, false, false},
};

enum { COMMANDS = sizeof commands / sizeof commands[0] };

/* Long options without a letter. */
enum { OPTION_STOCK = 256, OPTION_KERF, OPTION_TRIM, OPTION_BOTH, OPTION_SQUARE, OPTION_LEAST, OPTION_SECONDS };
enum { OPTION_CERTIFICATE = OPTION_SECONDS + 1, OPTION_SHOP };

static const struct option long_options[] = {
    {"client", required_argument, NULL, 'c'},
    {"output", required_argument, NULL, 'o'},
    {"json", no_argument, NULL, 'j'},
    {"quiet", no_argument, NULL, 'q'},
    {"color", required_argument, NULL, 'C'},
    {"help", no_argument, NULL, 'h'},
    {"version", no_argument, NULL, 'V'},
    {"stock", required_argument, NULL, OPTION_STOCK},
    {"kerf", required_argument, NULL, OPTION_KERF},
    {"trim", required_argument, NULL, OPTION_TRIM},
    {"both-ends", no_argument, NULL, OPTION_BOTH},
    {"square-both-ends", no_argument, NULL, OPTION_SQUARE},
    {"least-cutoff", required_argument, NULL, OPTION_LEAST},
    {"seconds", required_argument, NULL, OPTION_SECONDS},
    {"certificate", required_argument, NULL, OPTION_CERTIFICATE},
    {"shop-stock", required_argument, NULL, OPTION_SHOP},
    {NULL, 0, NULL, 0},
};

static void out_of_memory(void *owner)
{
    (void)owner;
    say("out of memory");
    exit(EXIT_FAILED);
}

static void show_help(void)
{
    printf("usage: sawbill COMMAND [options] JOB\n\n"
           "Prices the removal of a load-bearing wall from a job file (INI or JSON; - is standard input).\n\n");
    for (size_t i = 0; i < COMMANDS; i++)
        printf("  %-8s %-7s %s\n", commands[i].name, commands[i].arguments, commands[i].help);
    printf("\noptions:\n"
           "  -o, --output FILE   where to write (bid: the workbook; else: what would be printed)\n"
           "      --client FILE   bid: a second workbook for the client, without cost\n"
           "      --certificate FILE  cuts: what another program needs to check the plan and its proof\n"
           "      --shop-stock FILE   cuts: the shop's stock afterwards, with the cutoffs worth keeping\n"
           "      --stock FILE    cuts: the argument is a list of pieces, this one of stock; then also\n"
           "                      --kerf LENGTH, --trim LENGTH, --both-ends, --square-both-ends,\n"
           "                      --least-cutoff LENGTH, --seconds N (a limit of time)\n"
           "      --json          print one JSON object\n"
           "  -q, --quiet         no notes and no tables; stops and asks are always shown\n"
           "      --color WHEN    auto, always or never\n"
           "      --help, --version\n\n"
           "exit status: 0 done; 1 done, but a check fails or an ask is open; 2 wrong use; 3 a stop;\n"
           "4 a file could not be read or written; 5 internal failure\n\n%s\n",
           caution_text());
}

static const struct command *find_command(const char *name)
{
    for (size_t i = 0; i < COMMANDS; i++)
        if (!strcmp(commands[i].name, name))
            return &commands[i];
    return NULL;
}

static enum exit_status unknown_command(const char *name)
{
    const char *names[COMMANDS];
    for (size_t i = 0; i < COMMANDS; i++)
        names[i] = commands[i].name;
    struct arena *arena = arena_new(0, out_of_memory, NULL);
    const char *near = did_you_mean(arena, name, names, COMMANDS);
    if (near)
        say("unknown command '%s'; did you mean '%s'?", name, near);
    else
        say("unknown command '%s'; 'sawbill --help' lists them", name);
    arena_free(arena);
    return EXIT_USE;
}

static bool color_wanted(const char *when)
{
    if (!strcmp(when, "always"))
        return true;
    if (!strcmp(when, "never"))
        return false;
    const char *no_color = getenv("NO_COLOR"), *term = getenv("TERM");
    return isatty(STDOUT_FILENO) && !(no_color && *no_color) && term && strcmp(term, "dumb") != 0;
}

static int terminal_width(void)
{
    struct winsize size;
    if (isatty(STDOUT_FILENO) && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 40)
        return size.ws_col < 160 ? size.ws_col : 160;
    return 100;
}

/* An option of cuts; false: it is none. */
static bool read_cuts_option(int c, const char *name, struct cuts_options *cuts)
{
    const struct {
        int option;
        const char **text;
    } texts[] = {
        {OPTION_STOCK, &cuts->stock},        {OPTION_KERF, &cuts->kerf},       {OPTION_TRIM, &cuts->trim},
        {OPTION_LEAST, &cuts->least_cutoff}, {OPTION_SECONDS, &cuts->seconds}, {OPTION_CERTIFICATE, &cuts->certificate},
        {OPTION_SHOP, &cuts->shop_stock},
    };
    if (c < OPTION_STOCK || c > OPTION_SHOP)
        return false;
    cuts->both_ends = cuts->both_ends || c == OPTION_BOTH;
    cuts->square_both_ends = cuts->square_both_ends || c == OPTION_SQUARE;
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++)
        if (texts[i].option == c)
            *texts[i].text = optarg;
    if (!cuts->first)
        cuts->first = name;
    return true;
}

/* Reads the options; returns false after saying what is wrong.  *done: help or version was shown. */
static bool read_options(int argc, char **argv, struct options *options, bool *done)
{
    const char *when = "auto";
    int index = 0;
    for (int c; (c = getopt_long(argc, argv, "o:qh", long_options, &index)) != -1;) {
        if (read_cuts_option(c, long_options[index].name, &options->cuts))
            continue;
        switch (c) {
        case 'o':
            options->output = optarg;
            break;
        case 'c':
            options->client = optarg;
            break;
        case 'j':
            options->json = true;
            break;
        case 'q':
            options->quiet = true;
            break;
        case 'C':
            when = optarg;
            break;
        case 'h':
            show_help();
            return *done = true;
        case 'V':
            printf("sawbill " SAWBILL_VERSION "\n");
            return *done = true;
        default: /* getopt_long has said what is wrong */
            return false;
        }
    }
    if (strcmp(when, "auto") != 0 && strcmp(when, "always") != 0 && strcmp(when, "never") != 0) {
        say("--color takes auto, always or never, not '%s'", when);
        return false;
    }
    options->color = color_wanted(when);
    options->width = terminal_width();
    options->argument = (const char *const *)argv + optind;
    options->argument_count = (size_t)(argc - optind);
    return true;
}

static enum exit_status run_command(struct options *options)
{
    if (options->argument_count == 0) {
        say("which command? 'sawbill --help' lists them");
        return EXIT_USE;
    }
    const struct command *command = find_command(options->argument[0]);
    if (!command)
        return unknown_command(options->argument[0]);
    options->argument++;
    options->argument_count--;
    if (options->argument_count < command->least || options->argument_count > command->most) {
        say("usage: sawbill %s [options] %s", command->name, command->arguments);
        return EXIT_USE;
    }
    if (options->client && !command->client) {
        say("--client goes with 'sawbill bid'");
        return EXIT_USE;
    }
    if (options->cuts.first && !command->cuts) {
        say("--%s goes with 'sawbill cuts'", options->cuts.first);
        return EXIT_USE;
    }
    struct arena *arena = arena_new(0, out_of_memory, NULL);
    if (!arena)
        out_of_memory(NULL);
    enum exit_status status = command->run(arena, options);
    arena_free(arena);
    return status;
}

int main(int argc, char **argv)
{
    struct options options = {0};
    bool done = false;
    enum exit_status status = EXIT_USE;
    if (read_options(argc, argv, &options, &done))
        status = done ? EXIT_DONE : run_command(&options);
    if (fflush(stdout) != 0 || ferror(stdout)) {
        say("cannot write to standard output");
        status = exit_worse(status, EXIT_FILE);
    }
    return (int)status;
}
