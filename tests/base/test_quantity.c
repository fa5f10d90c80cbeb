/* Quantities.  Factors: NIST Special Publication 811 (2008), appendix B.8, from memory: 1 lbf/ft2 = 47.88026 Pa,
 * 1 lbf/ft = 14.59390 N/m, 1 lbf = 4.4482216152605 N, 1 ft2 = 0.09290304 m2 (exact), 1 yd3 = 27 ft3. */
#include "every.h"

#include "sawbill/quantity.h"

enum { ROUNDS = 100000 };

struct reading {
    const char *text;
    int64_t millionths;
    enum unit unit;
};

static const struct reading READINGS[] = {
    {"40 psf", 40000000, UNIT_PSF},
    {"40psf", 40000000, UNIT_PSF},
    {"40 PSF", 40000000, UNIT_PSF},
    {"40 lb/sq ft", 40000000, UNIT_PSF},
    {"40 lb/sq. ft.", 40000000, UNIT_PSF},
    {"40 lb/ft\u00b2", 40000000, UNIT_PSF},
    {"40 lb/ft2", 40000000, UNIT_PSF},
    {"2.4 kPa", 2400000, UNIT_KPA},
    {"2.4 kN/m\u00b2", 2400000, UNIT_KPA},
    {"120 plf", 120000000, UNIT_PLF},
    {"120 lb/ft", 120000000, UNIT_PLF},
    {"1.75 kN/m", 1750000, UNIT_KN_M},
    {"1,250 lb", 1250000000, UNIT_LB},
    {"1250 lbs", 1250000000, UNIT_LB},
    {"1250 pounds", 1250000000, UNIT_LB},
    {"1.25 kip", 1250000, UNIT_KIP},
    {"5 kN", 5000000, UNIT_KN},
    {"12 sq ft", 12000000, UNIT_SQFT},
    {"12 sq. ft.", 12000000, UNIT_SQFT},
    {"12 square feet", 12000000, UNIT_SQFT},
    {"12 ft\u00b2", 12000000, UNIT_SQFT},
    {"1.5 m\u00b2", 1500000, UNIT_SQM},
    {"1.5 sq m", 1500000, UNIT_SQM},
    {"3 cu ft", 3000000, UNIT_CUFT},
    {"3 ft\u00b3", 3000000, UNIT_CUFT},
    {"0.5 cu yd", 500000, UNIT_CUYD},
    {"150 pcf", 150000000, UNIT_PCF},
    {"150 lb/cu ft", 150000000, UNIT_PCF},
    {"6 hours", 6000000, UNIT_HOUR},
    {"6.5 h", 6500000, UNIT_HOUR},
    {"1 hr", 1000000, UNIT_HOUR},
    {"3 days", 3000000, UNIT_DAY},
    {"1 day", 1000000, UNIT_DAY},
    {"-10 psf", -10000000, UNIT_PSF},
    {"0.000001 lb", 1, UNIT_LB},
    {"0", 0, UNIT_NONE},
    {"0.0", 0, UNIT_NONE},
    {"0 psf", 0, UNIT_PSF},
    {"1000000000000 lb", INT64_C(1000000000000000000), UNIT_LB},
};

static void test_readings(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof READINGS / sizeof *READINGS; i++) {
        struct quantity value = {.millionths = -1};
        const char *why = NULL;
        if (!quantity_parse(READINGS[i].text, &value, &why))
            fail_msg("'%s' refused: %s", READINGS[i].text, why);
        if (value.millionths != READINGS[i].millionths || value.unit != READINGS[i].unit)
            fail_msg("'%s': %lld of '%s'", READINGS[i].text, (long long)value.millionths, unit_name(value.unit));
    }
}

static void test_refusals(void **state)
{
    (void)state;
    static const struct {
        const char *text, *says;
    } BAD[] = {
        {"40", "no unit"},
        {"40.5", "no unit"},
        {"40 furlongs", "unknown unit"},
        {"40 psff", "unknown unit"},
        {"40 psf x", "unknown"},
        {"40 p\u00b2sf", "unknown"},
        {"psf", "not a number"},
        {"", "nothing"},
        {"   ", "nothing"},
        {"1.0000001 psf", "6 decimals"},
        {"1000000000000.000001 lb", NULL},
        {"2000000000000 lb", "large"},
        {"99999999999999999999 lb", "digits"},
        {"2,4 kPa", "comma"},
        {"1e3 lb", "unknown"},
        {"nan lb", NULL},
        {"--5 lb", NULL},
        {"5. lb", "point"},
        {"5 \xff", "unknown"},
        {"5 aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", "unknown"},
    };
    for (size_t i = 0; i < sizeof BAD / sizeof *BAD; i++) {
        struct quantity value = {.millionths = 77};
        const char *why = NULL;
        if (quantity_parse(BAD[i].text, &value, &why))
            fail_msg("'%s' read", BAD[i].text);
        assert_int_equal(value.millionths, 77);
        assert_true(why && *why);
        if (BAD[i].says && !strstr(why, BAD[i].says))
            fail_msg("'%s' refused with '%s'", BAD[i].text, why);
    }
}

static double value_of(const char *text)
{
    struct quantity value = {0};
    const char *why = NULL;
    if (!quantity_parse(text, &value, &why))
        fail_msg("'%s' refused: %s", text, why);
    return quantity_value(value);
}

static void test_conversions(void **state)
{
    (void)state;
    assert_near(value_of("40 psf"), 40, 0);
    assert_within(value_of("1 kPa"), 1000.0 / 47.88026, 1e-7);
    assert_within(value_of("2.4 kPa"), 2400.0 / 47.88026, 1e-7);
    assert_within(value_of("1 kN/m"), 1000.0 / 14.59390, 1e-6);
    assert_within(value_of("4.448222 kN"), 4.448222 / 4.4482216152605 * 1000, 1e-12);
    assert_near(value_of("1.25 kip"), 1250, 0);
    assert_within(value_of("0.092903 sq m"), 0.092903 / 0.09290304, 1e-12);
    assert_near(value_of("2 cu yd"), 54, 0);
    assert_near(value_of("150 pcf"), 150, 0);
    assert_near(value_of("6.5 hours"), 6.5, 0);
    assert_near(value_of("3 days"), 3, 0);
    assert_near(value_of("0"), 0, 0);
}

static void test_dimensions(void **state)
{
    (void)state;
    assert_int_equal(unit_dimension(UNIT_PSF), unit_dimension(UNIT_KPA));
    assert_int_equal(unit_dimension(UNIT_PLF), unit_dimension(UNIT_KN_M));
    assert_int_equal(unit_dimension(UNIT_LB), unit_dimension(UNIT_KN));
    assert_true(unit_dimension(UNIT_PSF) != unit_dimension(UNIT_PLF)); /* the mix-up of the trade */
    assert_true(unit_dimension(UNIT_HOUR) != unit_dimension(UNIT_DAY));
    for (int unit = 0; unit < UNIT_COUNT_; unit++) {
        assert_non_null(unit_name((enum unit)unit));
        assert_true(*dimension_name(unit_dimension((enum unit)unit)) != '\0');
    }
}

static void test_round_trip(void **state)
{
    uint64_t random = 47880;
    for (int i = 0; i < ROUNDS; i++) {
        if (i % 1000 == 0) {
            arena_free(*state);
            assert_int_equal(support_setup(state), 0);
        }
        enum unit unit = (enum unit)(1 + random_up_to(&random, UNIT_COUNT_ - 2));
        struct quantity value = {.millionths = random_up_to(&random, INT64_C(1000000000000)) - 500000, .unit = unit};
        struct quantity back = {0};
        const char *why = NULL;
        const char *text = quantity_text(*state, value);
        if (!quantity_parse(text, &back, &why))
            fail_msg("'%s' refused: %s", text, why);
        assert_int_equal(back.millionths, value.millionths);
        assert_int_equal(back.unit, value.unit);
    }
    assert_string_equal(quantity_text(*state, (struct quantity){2400000, UNIT_KPA}), "2.4 kPa");
    assert_string_equal(quantity_text(*state, (struct quantity){0, UNIT_NONE}), "0");
}

int main(int argc, char **argv)
{
    int failed = set_locale_from(argc, argv);
    if (failed)
        return failed;
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_readings),
        cmocka_unit_test(test_refusals),
        cmocka_unit_test(test_conversions),
        cmocka_unit_test(test_dimensions),
        cmocka_unit_test_setup_teardown(test_round_trip, support_setup, support_teardown),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
