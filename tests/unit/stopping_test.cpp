// The sheet `stopping`. Friction, stops and bends are checked against print in tests/published.
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;

namespace {

Json ask(Json input) {
  input["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer("stopping", input.dump()));
}

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

double value(const Json& answer, const std::string& id) {
  const Json* figure = with_id(answer["figures"], id);
  REQUIRE(figure);
  return (*figure)["value"];
}

}  // namespace

TEST_CASE("thinking and braking make up the stop, and reaction is the driver's own") {
  const Json answer = ask({{"speed", "72 km/h"}, {"reaction", "1.5 s"}});
  REQUIRE(answer["ok"] == true);
  CHECK(value(answer, "thinking") == Approx(30.0));
  CHECK(value(answer, "stopping") == Approx(value(answer, "thinking") + value(answer, "braking")));
  CHECK(value(ask({{"speed", "72 km/h"}}), "thinking") == Approx(50.0));  // 2.5 s
  CHECK(answer["verdict"]["level"] == "fit");
}

TEST_CASE("rule 126 at 50 mph is 53 m, beside our own stop") {
  CHECK(value(ask({{"speed", "50 mph"}}), "highway_code") == Approx(53.0).margin(0.5));
}

TEST_CASE("wetter, more worn, downhill, slicker ground: each lengthens the stop") {
  const Json base = {{"speed", "80 km/h"}, {"tread", "8 mm"}};
  const auto stop = [&](Json change) {
    Json input = base;
    input.update(change);
    return value(ask(input), "stopping");
  };
  const double dry = stop(Json::object());
  CHECK(stop({{"wetness", "wet"}}) > dry);
  CHECK(stop({{"wetness", "wet"}, {"tread", "1.6 mm"}}) > stop({{"wetness", "wet"}}));
  CHECK(stop({{"grade", "-8"}}) > dry);
  CHECK(stop({{"grade", "8"}}) < dry);
  CHECK(stop({{"surface", "ice-cold"}}) > stop({{"surface", "snow"}}));
}

TEST_CASE("what can be seen limits the speed; the stop from there is as long as the sight") {
  const Json answer = ask({{"speed", "100 km/h"}, {"seen", "60 m"}, {"reaction", "1.5 s"}});
  const Json* limit = with_id(answer["limits"], "seen_distance");
  REQUIRE(limit);
  CHECK(answer["hold_to"]["governed_by"] == "seen_distance");
  const double kmh = (*limit)["low_kmh"];
  const Json there = ask({{"speed", std::to_string(kmh) + " km/h"}, {"reaction", "1.5 s"}});
  CHECK((*with_id(there["figures"], "stopping"))["high"].get<double>() == Approx(60.0).margin(0.6));
  CHECK(with_id(answer["cautions"], "too_fast"));
  CHECK(answer["verdict"]["level"] == "unfit");
}

TEST_CASE("a grade steeper than the grip: it will not stop, which is an answer") {
  const Json answer = ask({{"speed", "30 km/h"}, {"surface", "ice"}, {"grade", "-30"}});
  REQUIRE(answer["ok"] == true);
  CHECK(with_id(answer["cautions"], "will_not_stop"));
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(answer["verdict"]["text"].get<std::string>().find("will not stop") != std::string::npos);
}

TEST_CASE("a bend from chord and sagitta is the bend of its radius") {
  // R = c^2 / 8 s + s / 2
  const Json paced = ask({{"speed", "60 km/h"}, {"chord", "20 m"}, {"sagitta", "1 m"}});
  const Json known = ask({{"speed", "60 km/h"}, {"radius", "50.5 m"}});
  CHECK(value(paced, "radius") == Approx(50.5));
  CHECK((*with_id(paced["limits"], "bend"))["kmh"].get<double>() ==
        Approx((*with_id(known["limits"], "bend"))["kmh"].get<double>()));
  CHECK(value(known, "braking_left") < 100.0);
}

TEST_CASE("standing water: the onset of floating caps what friction promises") {
  const Json answer = ask({{"speed", "100 km/h"}, {"water", "5 mm"}, {"tread", "3 mm"}});
  CHECK(answer["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(with_id(answer["cautions"], "floats"));
  CHECK_FALSE(with_id(ask({{"speed", "100 km/h"}, {"wetness", "wet"}})["limits"], "aquaplaning"));
}

TEST_CASE("where a new tread has stopped, a worn one is still moving") {
  const Json answer = ask({{"speed", "80 km/h"}, {"water", "1 mm"}, {"tread", "1.6 mm"}});
  CHECK(value(answer, "speed_where_new_stops") > 20.0);
  CHECK(value(answer, "worn_ratio") > 1.2);
  CHECK_FALSE(with_id(ask({{"speed", "80 km/h"}, {"tread", "1.6 mm"}})["figures"], "worn_ratio"));
}

TEST_CASE("cold race rubber is said; the gap doubles in the wet and is ten times on ice") {
  CHECK(with_id(ask({{"speed", "50 km/h"}, {"rubber", "soft-race"}, {"heat", "20 °C"}})["cautions"],
                "rubber_heat"));
  const double dry = value(ask({{"speed", "50 km/h"}}), "gap");
  CHECK(value(ask({{"speed", "50 km/h"}, {"wetness", "wet"}}), "gap") == Approx(2.0 * dry));
  CHECK(value(ask({{"speed", "50 km/h"}, {"surface", "ice"}}), "gap") == Approx(10.0 * dry));
}

TEST_CASE("the obstacle: nothing is left where the room is enough") {
  CHECK(value(ask({{"speed", "50 km/h"}, {"obstacle", "60 m"}}), "speed_left") == 0.0);
  const Json answer = ask({{"speed", "80 km/h"}, {"obstacle", "10 m"}});
  CHECK(value(answer, "speed_left") > 50.0);
  CHECK(with_id(answer["cautions"], "hits_obstacle"));
}
