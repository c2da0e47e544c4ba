// The rate of wear, and the sheet that tells it.
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "core/wear/rate.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

std::vector<wear::Depth> line(double start, double slope, std::vector<double> at) {
  std::vector<wear::Depth> readings;
  for (const double x : at) readings.push_back({x, millimetres(start - slope * x)});
  return readings;
}

Json asked(const Json& readings) {
  const Json input = {{"place", "EU"}, {"today", "2026-11-25"}, {"readings", readings}};
  return Json::parse(json::answer("wear-log", input.dump()));
}

const Json* figure(const Json& answer, const std::string& id) {
  for (const Json& f : answer["figures"])
    if (f["id"] == id) return &f;
  return nullptr;
}

std::string text_of(const Json& answer, const std::string& id) {
  for (const Json& c : answer["cautions"])
    if (c["id"] == id) return c["text"];
  return "";
}

bool cautions(const Json& answer, const std::string& id) { return !text_of(answer, id).empty(); }

}  // namespace

TEST_CASE("readings on a straight line give its slope and its place") {
  const auto rate = wear::rate_of(line(8.0, 0.01, {0, 100, 250, 400}));
  REQUIRE(rate);
  CHECK(in_millimetres(rate->per_unit) == Approx(0.01));
  CHECK(in_millimetres(rate->depth_there) == Approx(4.0));
  const wear::Until until = wear::until(*rate, millimetres(3.0));
  REQUIRE(until.central);
  CHECK(*until.central == Approx(500.0));
  CHECK(*until.earliest < 500.0);
  CHECK(*until.latest > 500.0);
}

TEST_CASE("one bad reading in five moves the rate by less than a tenth, and is called odd") {
  auto readings = line(8.0, 0.01, {0, 100, 200, 300, 400});
  readings[2].depth = millimetres(2.0);
  const auto rate = wear::rate_of(readings);
  REQUIRE(rate);
  CHECK(in_millimetres(rate->per_unit) == Approx(0.01).epsilon(0.1));
  CHECK(wear::is_odd(*rate, readings[2]));
  CHECK_FALSE(wear::is_odd(*rate, readings[1]));
}

TEST_CASE("the band of two readings is the gauge's error over their span") {
  const auto rate = wear::rate_of(line(8.0, 0.01, {0, 100}));
  REQUIRE(rate);
  CHECK(in_millimetres(rate->high - rate->per_unit) == Approx(std::sqrt(2.0) * 0.2 / 100.0));
  CHECK(in_millimetres(rate->per_unit - rate->low) == Approx(std::sqrt(2.0) * 0.2 / 100.0));
}

TEST_CASE("no rate from one reading, from one day, or from what is no number") {
  CHECK_FALSE(wear::rate_of(line(8.0, 0.01, {5})));
  CHECK_FALSE(wear::rate_of(line(8.0, 0.01, {5, 5, 5})));
  CHECK_FALSE(wear::rate_of(line(8.0, 0.01, {0, std::numeric_limits<double>::quiet_NaN()})));
}

TEST_CASE("a tread that does not wear never comes down to a depth") {
  const auto rate = wear::rate_of(line(6.0, 0.0, {0, 100, 200}));
  REQUIRE(rate);
  const wear::Until until = wear::until(*rate, millimetres(3.0));
  CHECK_FALSE(until.central);
  CHECK_FALSE(until.latest);
  CHECK(until.earliest);  // by what the gauge may hide
}

TEST_CASE("the log tells rate, distance and date of each tyre") {
  const Json answer = asked({{{"tyre", "front-left"},
                              {"date", "2025-11-25"},
                              {"depth", "6 mm"},
                              {"odometer", "10000 km"}},
                             {{"tyre", "front-left"},
                              {"date", "2026-11-25"},
                              {"depth", "4 mm"},
                              {"odometer", "30000 km"}}});
  REQUIRE(answer["ok"] == true);
  CHECK(answer["verdict"]["level"] == "fit");
  REQUIRE(figure(answer, "rate_by_time"));
  CHECK((*figure(answer, "rate_by_time"))["value"].get<double>() == Approx(2.0).epsilon(0.01));
  CHECK((*figure(answer, "rate_by_distance"))["value"].get<double>() == Approx(1.0));
  CHECK((*figure(answer, "until"))["text"].get<std::string>().find("10000 km more") !=
        std::string::npos);
  CHECK(answer["blocks"].size() == 1);
}

TEST_CASE("a tyre under the law is unfit, however slowly it wears") {
  const Json answer = asked({{{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", "1.5 mm"}}});
  REQUIRE(answer["ok"] == true);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(cautions(answer, "one_reading"));
}

TEST_CASE("winter law, an old reading and an old tyre are judged") {
  const auto level = [](const char* place, const char* today, const char* day, const char* depth) {
    const Json input = {{"place", place},
                        {"today", today},
                        {"readings", {{{"tyre", "other"}, {"date", day}, {"depth", depth}}}}};
    return Json::parse(json::answer("wear-log", input.dump()))["verdict"]["level"]
        .get<std::string>();
  };
  CHECK(level("NO", "2026-11-25", "2026-11-20", "2.9 mm") == "unfit");
  CHECK(level("NO", "2026-11-25", "2026-11-20", "3.1 mm") == "care");
  CHECK(level("NO", "2026-11-25", "2026-11-20", "3.2 mm") == "care");  // as in the check of a tyre
  CHECK(level("NO", "2026-11-25", "2026-11-20", "3.3 mm") == "fit");
  CHECK(level("AT", "2026-11-25", "2026-11-20", "4.1 mm") == "care");
  CHECK(level("NO", "2026-07-25", "2026-07-20", "3.1 mm") == "fit");
  CHECK(level("AT", "2026-11-25", "2026-11-20", "3.5 mm") == "care");  // if it is a winter tyre
  CHECK(level("DE", "2026-11-25", "2026-11-20", "3.5 mm") == "fit");
  CHECK(level("DE", "2026-11-25", "2026-06-20", "4 mm") == "fit");
  CHECK(level("DE", "2026-11-25", "2026-05-20", "4 mm") == "care");
  CHECK(level("DE", "2026-11-25", "2012-05-20", "4 mm") == "unfit");
}

TEST_CASE(
    "more tread than before is another tyre, whose age is its own; of one day the least counts") {
  CHECK_FALSE(cautions(asked({{{"tyre", "other"}, {"date", "2014-11-01"}, {"depth", "3 mm"}},
                              {{"tyre", "other"}, {"date", "2025-11-01"}, {"depth", "8 mm"}}}),
                       "over_ten_years"));
  CHECK(
      asked({{{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", "1.5 mm"}},
             {{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", "8 mm"}}})["verdict"]["level"] ==
      "unfit");
}

TEST_CASE("two grooves of one day, or less than 1 mm more, make no tyre younger") {
  const auto of_2014 = [](const char* then, const char* other_groove) {
    return asked({{{"tyre", "other"}, {"date", "2014-11-01"}, {"depth", "5 mm"}},
                  {{"tyre", "other"}, {"date", "2026-10-01"}, {"depth", then}},
                  {{"tyre", "other"}, {"date", "2026-10-01"}, {"depth", other_groove}}});
  };
  CHECK(cautions(of_2014("4 mm", "5.5 mm"), "over_ten_years"));
  // The rate does not lean on a tyre that may be another, nor does the age.
  CHECK(cautions(of_2014("5.8 mm", "5.8 mm"), "tread_rose"));
  CHECK(cautions(of_2014("5.8 mm", "5.8 mm"), "over_ten_years"));
  CHECK_FALSE(cautions(of_2014("6.2 mm", "6.2 mm"), "over_ten_years"));
}

TEST_CASE("a day that is past is said as past, and asks to measure before driving") {
  const auto log = [](const char* day, const char* depth, const char* later, const char* then) {
    return asked({{{"tyre", "front-left"}, {"date", day}, {"depth", depth}},
                  {{"tyre", "front-left"}, {"date", later}, {"depth", then}}});
  };
  const Json old = log("2022-04-12", "7 mm", "2022-10-12", "2.5 mm");
  CHECK(old["verdict"]["level"] == "care");
  CHECK(text_of(old, "law_passed").find("in November 2022, and that is past. Measure it before") !=
        std::string::npos);
  CHECK_FALSE(cautions(old, "law_soon"));
  CHECK((*figure(old, "until"))["text"].get<std::string>().find("November 2022 (past)") !=
        std::string::npos);
  CHECK(cautions(log("2025-04-12", "3.0 mm", "2025-10-12", "1.7 mm"), "law_passed"));
  const Json perhaps = log("2026-10-20", "2.3 mm", "2026-11-10", "2.2 mm");
  CHECK(text_of(perhaps, "law_passed").find("may have come down") == std::string::npos);
  CHECK(cautions(perhaps, "law_soon"));
  CHECK(text_of(log("2026-10-31", "2.3 mm", "2026-11-05", "2.28 mm"), "law_passed")
            .find("it may have come down to 1.6 mm as early as November 2026") !=
        std::string::npos);
}

TEST_CASE("tread that rose is another tyre: the rate counts from there on") {
  const Json answer = asked({{{"tyre", "front-left"}, {"date", "2024-04-12"}, {"depth", "3 mm"}},
                             {{"tyre", "front-left"}, {"date", "2024-10-12"}, {"depth", "2 mm"}},
                             {{"tyre", "front-left"}, {"date", "2024-11-12"}, {"depth", "8 mm"}},
                             {{"tyre", "front-left"}, {"date", "2025-11-12"}, {"depth", "6.5 mm"}},
                             {{"tyre", "front-left"}, {"date", "2026-11-12"}, {"depth", "5 mm"}}});
  CHECK(answer["verdict"]["level"] == "fit");
  CHECK_FALSE(cautions(answer, "odd_reading"));
  const std::string rose = text_of(answer, "tread_rose");
  CHECK(rose.find("Front left: 8 mm in November 2024, and 2 mm before that.") == 0);
  CHECK(rose.find("leaves out 2 earlier readings.") != std::string::npos);
  CHECK((*figure(answer, "rate_by_time"))["value"].get<double>() == Approx(1.5).epsilon(0.01));
  CHECK(answer["blocks"][0]["rows"][1][2] == "");

  // Seen once only it may be a wrong reading; by less than two gauges' errors it is one.
  const auto twice = [](const char* first, const char* then) {
    return asked({{{"tyre", "other"}, {"date", "2026-10-01"}, {"depth", first}},
                  {{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", then}}});
  };
  CHECK(twice("2 mm", "6.5 mm")["verdict"]["level"] == "care");
  CHECK(cautions(twice("5 mm", "5.5 mm"), "tread_rose"));
  CHECK_FALSE(cautions(twice("4.8 mm", "5.2 mm"), "tread_rose"));
  CHECK_FALSE(cautions(asked({{{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", "5 mm"}},
                              {{"tyre", "other"}, {"date", "2026-11-01"}, {"depth", "6 mm"}}}),
                       "tread_rose"));  // two grooves
}

TEST_CASE("an odometer that runs back is named, and no distance is told from it") {
  const auto log = [](const char* then) {
    return asked(
        {{{"tyre", "front-left"},
          {"date", "2025-11-25"},
          {"depth", "7 mm"},
          {"odometer", "30000 km"}},
         {{"tyre", "front-left"}, {"date", "2026-11-20"}, {"depth", "6 mm"}, {"odometer", then}}});
  };
  const Json back = log("29000 km");
  CHECK(back["verdict"]["level"] == "care");
  CHECK(text_of(back, "odometer_back").find("29000 km on 2026-11-20, and stood at 30000 km on") !=
        std::string::npos);
  CHECK_FALSE(figure(back, "rate_by_distance"));
  CHECK(figure(back, "rate_by_time"));
  CHECK_FALSE(cautions(log("30000 km"), "odometer_back"));
}

TEST_CASE("uneven axles are said, and the deeper tread goes to the rear") {
  const Json answer = asked({{{"tyre", "front-left"}, {"date", "2026-11-01"}, {"depth", "7 mm"}},
                             {{"tyre", "front-right"}, {"date", "2026-11-01"}, {"depth", "5 mm"}},
                             {{"tyre", "rear-left"}, {"date", "2026-11-01"}, {"depth", "4 mm"}}});
  int said = 0;
  for (const Json& c : answer["cautions"]) said += c["id"] == "uneven_tread" ? 1 : 0;
  CHECK(said == 2);
}

TEST_CASE("a wrong row is named by its path, and nothing is concluded from it") {
  const Json answer = asked({{{"tyre", "front-left"}, {"date", "yesterday"}, {"depth", "6 mm"}},
                             {{"tyre", "front-left"}, {"date", "2027-11-25"}, {"depth", "6 mm"}},
                             {{"tyre", "front-left"}, {"date", "2026-11-25"}, {"depth", "6 kg"}}});
  CHECK(answer["ok"] == false);
  REQUIRE(answer["problems"].size() == 3);
  CHECK(answer["problems"][0]["field"] == "readings.0.date");
  CHECK(answer["problems"][1]["code"] == "in_the_future");
  CHECK(answer["problems"][2]["field"] == "readings.2.depth");
  CHECK_FALSE(answer.contains("verdict"));
}

TEST_CASE("an empty log asks for readings") {
  const Json answer = asked(Json::array());
  REQUIRE(answer["problems"].size() == 1);
  CHECK(answer["problems"][0]["field"] == "readings");
}

TEST_CASE("an odd low last reading is care, and the dates go on from it") {
  const auto log = [](const char* last) {
    Json readings = Json::array();
    const char* days[] = {"2025-11-25", "2026-02-25", "2026-05-25", "2026-08-25", "2026-11-20"};
    const char* depths[] = {"8 mm", "7.7 mm", "7.4 mm", "7.1 mm", last};
    for (int i = 0; i < 5; ++i)
      readings.push_back({{"tyre", "front-left"}, {"date", days[i]}, {"depth", depths[i]}});
    return asked(readings);
  };
  const Json low = log("3.4 mm");
  CHECK(low["verdict"]["level"] == "care");
  CHECK(text_of(low, "odd_reading").find("Measure again before you drive") != std::string::npos);
  REQUIRE(figure(low, "until"));
  CHECK((*figure(low, "until"))["value"].get<double>() < 6.0);  // months, to 3 mm
  CHECK(log("6.8 mm")["verdict"]["level"] == "fit");
  // The line is carried on from where the last reading is, if that is the lower.
  CHECK((*figure(log("6.5 mm"), "until"))["value"].get<double>() <
        (*figure(log("6.8 mm"), "until"))["value"].get<double>());
  const wear::Rate rate = *wear::rate_of({{0.0, millimetres(8.0)},
                                          {1.0, millimetres(7.7)},
                                          {2.0, millimetres(7.4)},
                                          {3.0, millimetres(7.1)},
                                          {4.0, millimetres(3.4)}});
  CHECK(in_millimetres(rate.from_there) == Approx(3.4));
  CHECK(in_millimetres(rate.depth_there) == Approx(6.8).epsilon(0.05));
}

TEST_CASE("three readings of one day by kilometres are readings") {
  const auto at = [](const char* odometer, const char* depth) {
    return Json{
        {"tyre", "rear-left"}, {"date", "2026-11-20"}, {"depth", depth}, {"odometer", odometer}};
  };
  const Json answer =
      asked({at("10000 km", "8 mm"), at("10400 km", "7 mm"), at("10800 km", "6 mm")});
  REQUIRE(answer["ok"] == true);
  CHECK_FALSE(cautions(answer, "one_reading"));
  CHECK(cautions(answer, "one_day"));
  REQUIRE(figure(answer, "rate_by_distance"));
  CHECK((*figure(answer, "rate_by_distance"))["value"].get<double>() == Approx(25.0));
  CHECK_FALSE(figure(answer, "rate_by_time"));
  REQUIRE(figure(answer, "until_distance"));
  CHECK((*figure(answer, "until_distance"))["value"].get<double>() == Approx(1200.0));
  // Two grooves of one day at one place are not.
  CHECK(cautions(asked({at("10000 km", "8 mm"), at("10000 km", "7 mm")}), "one_reading"));
}
