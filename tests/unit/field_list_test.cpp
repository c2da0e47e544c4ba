// The sheet field-list: each row as the sheet for one tyre has it, and no fault of a row that opens
// the way for it.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheets.hpp"

using Json = nlohmann::json;

namespace {

Json ask(const Json& input, const std::string& sheet = "field-list") {
  return Json::parse(treadwater::json::answer(sheet, input.dump()));
}

Json tyre(const std::string& name, const std::string& tread = "6 mm",
          const std::string& size = "205/55 R16 91V") {
  return {{"name", name},
          {"size", size},
          {"load", "400 kg"},
          {"pressure", "2.3 bar"},
          {"tread", tread}};
}

Json field(const std::vector<Json>& rows) {
  return {{"water", "4 mm"}, {"today", "2026-11-25"}, {"rows", rows}};
}

// The same tyre on the sheet for one.
Json alone(const Json& whole, std::size_t row) {
  Json one = whole["rows"][row];
  one.erase("name");
  for (const auto& shared : whole.items())
    if (shared.key() != "rows") one[shared.key()] = shared.value();
  return ask(one, "tyre-check");
}

const Json& block(const Json& answer, const std::string& id) {
  static const Json none;
  for (const Json& b : answer["blocks"])
    if (b["id"] == id) return b;
  return none;
}

// The row of a table that has this name.
Json row_of(const Json& answer, const std::string& name, const std::string& table = "field") {
  for (const Json& row : block(answer, table)["rows"])
    if (row[0] == name) return row;
  return {};
}

bool says(const Json& answer, const std::string& id) {
  for (const Json& c : answer["cautions"])
    if (c["id"] == id) return true;
  return false;
}

std::string said(const Json& answer, const std::string& id) {
  for (const Json& c : answer["cautions"])
    if (c["id"] == id) return c["text"];
  return {};
}

bool no_speed(const Json& answer) {
  return !answer.contains("hold_to") && !answer.contains("no_limit");
}

constexpr std::size_t finding = 1, hold_to = 2, governed_by = 3, cautions = 4;

}  // namespace

TEST_CASE("each row holds to what the sheet for that one tyre says, and the field to the lowest") {
  const char* sizes[] = {"205/55 R16 91V", "195/65R15 91T", "P215/65R15 95S",
                         "205/65R15 94L",  "185/60 R14",    "165 SR 13"};
  const char* kinds[] = {"road", "winter", "cut-slick"};
  const char* treads[] = {"2 mm", "3.4 mm", "8 mm"};
  std::vector<Json> rows, rated;
  for (const char* size : sizes)
    for (const char* kind : kinds)
      for (const char* tread : treads) {
        Json one = tyre(std::to_string(rows.size()), tread, size);
        one["tyre_kind"] = kind;
        one["pressure"] = rows.size() % 2 ? "1.7 bar" : "34 psi";
        rows.push_back(one);
        if (rows.size() <= 4 * 9) rated.push_back(one);  // the last two have no load index
      }
  for (const char* water : {"", "0", "1 mm", "6 mm", "40 mm"})
    for (const char* units : {"metric", "us"}) {
      INFO(water << " " << units);
      Json whole = field(rows);
      whole["water"] = water;
      whole["units"] = units;
      const Json all = ask(whole);
      REQUIRE(all["problems"] == Json::array());
      double lowest = 1e9;
      for (std::size_t i = 0; i < rows.size(); ++i) {
        const Json one = alone(whole, i);
        const Json row = row_of(all, std::to_string(i));
        const std::string level = one["verdict"]["level"];
        CHECK(row[finding] == (level == "unfit" ? "not fit" : level));
        CHECK(no_speed(one) == (i >= rated.size()));
        if (!one.contains("hold_to")) {
          CHECK(row[hold_to] == (one.contains("no_limit") ? "no limit here" : "not judged"));
          CHECK(row[governed_by] == "");
          continue;
        }
        const double kmh = one["hold_to"]["kmh"];
        lowest = std::min(lowest, kmh);
        CHECK(row[hold_to] ==
              (kmh > 0.0 ? one["hold_to"]["text"].get<std::string>() : "not at any speed"));
        CHECK(row[governed_by] == one["limits"][0]["label"]);
      }
      REQUIRE(lowest < 1e9);
      CHECK(lowest > 0.0);
      // The load of the last is not judged: the speed of the rest is told beside.
      CHECK(no_speed(all));
      CHECK(says(all, "no_speed"));
      whole["rows"] = rated;
      const Json judged = ask(whole);
      CHECK(judged["hold_to"]["kmh"] == lowest);
      CHECK(said(all, "without_unfit").find(judged["hold_to"]["text"].get<std::string>()) !=
            std::string::npos);
    }
}

TEST_CASE("a field that nothing limits is told so, with the lowest of its own limits") {
  Json whole = field({tyre("7"), tyre("8", "6 mm", "195/65 R15 91T")});
  whole["water"] = "";
  const Json a = ask(whole);
  CHECK_FALSE(a.contains("hold_to"));
  CHECK(a["no_limit"]["own_kmh"] == 190.0);
  CHECK(a["no_limit"]["own_text"] == "Its own limit is 190 km/h (8: Speed symbol T).");
  for (const Json& limit : a["limits"]) CHECK(limit["governs"] == false);
  CHECK(row_of(a, "7")[hold_to] == "no limit here");
  CHECK_FALSE(says(a, "no_speed"));
  whole["rows"].push_back(tyre("9", "6 mm", "195/65 R15 91L"));
  const Json slow = ask(whole);
  CHECK(slow["hold_to"]["kmh"] == 120.0);
  CHECK(slow["limits"][0]["governs"] == true);
  CHECK_FALSE(slow.contains("no_limit"));
}

TEST_CASE("a row whose load is not judged takes the field's speed, and the rest keep theirs") {
  const Json rest = ask(field({tyre("7"), tyre("8", "2.5 mm")}));
  REQUIRE(rest["hold_to"]["kmh"] > 0.0);
  // No load index; a reference pressure that is not known; a motorcycle's beaded edge, without a
  // rating.
  for (const char* size : {"205/55 R16", "195/70 R15C 104/102R", "650x65 M/C"}) {
    INFO(size);
    Json whole = field({tyre("7"), tyre("8", "2.5 mm"), tyre("9", "6 mm", size)});
    whole["rows"][2]["pressure"] = "2.5 bar";
    const Json a = ask(whole);
    CHECK(a["verdict"]["level"] == "care");
    CHECK(no_speed(a));
    for (const Json& limit : a["limits"]) CHECK(limit["governs"] == false);
    CHECK(said(a, "no_speed").find("9: ") == 0);
    CHECK(row_of(a, "9")[hold_to] == "not judged");
    CHECK(row_of(a, "8")[hold_to] == rest["hold_to"]["text"]);
    const std::string told = rest["hold_to"]["text"];
    CHECK(said(a, "without_unfit").find("holds to " + told) != std::string::npos);
    const std::string aloud = block(a, "radio")["text"];
    CHECK(aloud.find("Field of 3: no speed for all of them.") == 0);
    CHECK(aloud.find("The rest: hold to") != std::string::npos);
    // What may not be driven at all is told all the same.
    whole["rows"][0]["tread"] = "1 mm";
    CHECK(ask(whole)["hold_to"]["kmh"] == 0.0);
  }
}

TEST_CASE("the field's limits are those of the tyres that set them, word for word") {
  const Json whole = field({tyre("7"), tyre("12", "2.2 mm"), tyre("15", "5 mm", "195/65 R15 91S")});
  const Json all = ask(whole);
  CHECK(all["hold_to"]["governed_by"] == "aquaplaning");
  const Json& limit = all["limits"][0];
  CHECK(limit["label"] == "12: Aquaplaning");
  for (const Json& own : alone(whole, 1)["limits"])
    if (own["id"] == "aquaplaning") {
      for (const char* part : {"kmh", "low_kmh", "high_kmh", "text", "why", "sources"})
        CHECK(limit[part] == own[part]);
    }
  for (const Json& l : all["limits"])
    if (l["id"] == "speed_symbol") CHECK(l["label"] == "15: Speed symbol S");
}

TEST_CASE("a row that cannot be read is listed with its reason, and the field is not fit for it") {
  const std::pair<const char*, const char*> faults[] = {
      {"size", ""},          {"size", "banana"},         {"size", "205/55"},
      {"load", ""},          {"load", "banana"},         {"load", "nan"},
      {"load", "9000 kg"},   {"load", "430 psi"},        {"pressure", ""},
      {"pressure", "inf"},   {"pressure", "220 bar"},    {"pressure", "-1 bar"},
      {"tread", ""},         {"tread", "about 5"},       {"tread", "-2 mm"},
      {"tread", "5 kg"},     {"tread", "1e300"},         {"tread", "3 4 mm"},
      {"tyre_kind", "semi"}, {"tyre_kind", "Road tyre"}, {"date_code", "9999"},
      {"date_code", "x"},    {"date_code", "5030"},      {"size", "\xF0\x9F\x9B\x9E"}};
  for (const auto& fault : faults) {
    INFO(fault.first << ": " << fault.second);
    Json dry = field({tyre("7", "8 mm"), tyre("12", "8 mm"), tyre("15", "8 mm")});
    dry["water"] = "0";
    const Json good = ask(dry);
    CHECK(good["verdict"]["level"] == "fit");
    CHECK(good.contains("no_limit"));
    dry["rows"][1][fault.first] = fault.second;
    const Json a = ask(dry);
    CHECK(a["problems"] == Json::array());
    CHECK(a["verdict"]["level"] == "care");
    // Nothing is said to limit it while a line is not read.
    CHECK(no_speed(a));
    CHECK(says(a, "unread"));
    CHECK(a["verdict"]["text"].get<std::string>().find("1 of 3 could not be read") !=
          std::string::npos);
    CHECK(row_of(a, "12")[finding] == "not read");
    CHECK(row_of(a, "12")[hold_to] == "not judged");
    const Json& unread = block(a, "unread")["rows"];
    REQUIRE(unread.size() == 1);
    CHECK(unread[0][0] == "2");
    CHECK(unread[0][1] == "12");
    CHECK(unread[0][2].get<std::string>().size() > 20);
    Json wet = field({tyre("7", "8 mm"), tyre("12", "8 mm"), tyre("15", "8 mm")});
    const Json held = ask(wet);
    REQUIRE(held["hold_to"]["kmh"] > 0.0);
    wet["rows"][1][fault.first] = fault.second;
    const Json b = ask(wet);
    CHECK(b["verdict"]["level"] == "care");
    REQUIRE(b.contains("hold_to"));
    CHECK(b["hold_to"]["kmh"] <= held["hold_to"]["kmh"]);
    CHECK(b["hold_to"]["why"].get<std::string>().find(
              "does not stand for what could not be read") != std::string::npos);
    CHECK(block(b, "radio")["text"].get<std::string>().find("Not read: 1 of 3.") !=
          std::string::npos);
  }
}

TEST_CASE("what is known to be unfit of a row that cannot be read stays unfit") {
  Json whole = field({tyre("7"), tyre("12", "1.1 mm")});
  whole["rows"][1]["load"] = "";
  const Json a = ask(whole);
  CHECK(row_of(a, "12")[finding] == "not fit");
  CHECK(a["verdict"]["level"] == "unfit");
  CHECK(a["verdict"]["text"].get<std::string>().find("Not read: 1 of 2.") != std::string::npos);
  CHECK(a["hold_to"]["kmh"] == 0.0);
  CHECK(block(a, "unread")["rows"].size() == 1);
}

TEST_CASE("a slick on a wet road stops the field though the rest of its line cannot be read") {
  Json whole = field({tyre("7"), tyre("12")});
  whole["rows"][1]["tyre_kind"] = "slick";
  const Json read = ask(whole);
  CHECK(read["hold_to"]["kmh"] == 0.0);
  CHECK(read["hold_to"]["governed_by"] == "slick_in_water");
  whole["rows"][1]["load"] = "";
  const Json a = ask(whole);
  CHECK(row_of(a, "12")[finding] == "not fit");
  CHECK(a["verdict"]["level"] == "unfit");
  CHECK(a["hold_to"]["kmh"] == 0.0);
}

TEST_CASE("where nothing can be read there is no verdict, and neither is there for an empty list") {
  Json whole = field({tyre("7", "x"), tyre("8", "y")});
  Json a = ask(whole);
  CHECK(a["ok"] == false);
  CHECK(a["problems"][0]["code"] == "none_read");
  CHECK_FALSE(a.contains("verdict"));
  CHECK(no_speed(a));
  CHECK(block(a, "radio").is_null());
  CHECK(block(a, "unread")["rows"].size() == 2);
  for (const std::vector<Json>& rows : {std::vector<Json>{}, std::vector<Json>{Json::object()},
                                        std::vector<Json>{Json{{"tyre_kind", "road"}}}}) {
    a = ask(field(rows));
    CHECK(a["ok"] == false);
    CHECK(a["problems"][0]["field"] == "rows");
    CHECK(a["problems"][0]["code"] == "missing");
    CHECK_FALSE(a.contains("verdict"));
  }
}

TEST_CASE("empty lines are no lines; a line of a name alone is one that cannot be read") {
  Json whole = field({tyre("7"), Json::object(), Json{{"name", "  "}}, Json{{"name", "9"}}});
  const Json a = ask(whole);
  CHECK(block(a, "field")["rows"].size() == 2);
  CHECK(block(a, "unread")["rows"][0][0] == "4");
}

TEST_CASE("what all share is a problem where it cannot be read") {
  for (const char* id :
       {"wetness", "water", "speed", "surface", "place", "units", "pressure_state"}) {
    Json whole = field({tyre("7")});
    whole[id] = "banana";
    const Json a = ask(whole);
    CHECK(a["problems"][0]["field"] == id);
    CHECK_FALSE(a.contains("verdict"));
    CHECK(no_speed(a));
  }
}

TEST_CASE("worst first: not fit, not read, care, fit, and each by its speed") {
  Json whole = field({tyre("fit", "8 mm"), tyre("unread", "x"), tyre("worn", "2.5 mm"),
                      tyre("unrated", "8 mm", "205/55 R16"), tyre("bald", "1 mm"),
                      tyre("new", "8 mm", "205/55 R16 91H"), tyre("slow", "8 mm", "205/55 R16 91L"),
                      tyre("slower", "8 mm", "205/55 R16 91K")});
  whole["water"] = "0";
  const Json a = ask(whole);
  std::vector<std::string> names;
  for (const Json& row : block(a, "field")["rows"]) names.push_back(row[0]);
  // A speed that is not known comes before any that is, and none at all last, in the order given.
  CHECK(names == std::vector<std::string>{"bald", "unread", "unrated", "worn", "slower", "slow",
                                          "fit", "new"});
  CHECK(block(a, "field")["text"] == "Of 8: 1 not fit, 1 not read, 2 with care, 4 fit.");
  CHECK(block(a, "field")["picked_by"] == "Finding");
}

TEST_CASE("the law of the place decides, winter law too") {
  Json whole = field({tyre("7", "3.5 mm")});
  whole["rows"][0]["tyre_kind"] = "winter";
  const auto law = [&](const char* place) {
    whole["place"] = place;
    const Json a = ask(whole);
    return std::make_pair(row_of(a, "7")[finding].get<std::string>(),
                          row_of(a, "7", "scrutineer")[2].get<std::string>());
  };
  CHECK(law("GB").first == "care");
  CHECK(law("GB").second == "3.5 mm: over the 1.6 mm of the law");
  CHECK(law("AT").first == "not fit");
  CHECK(law("AT").second.find("under that for winter") != std::string::npos);
  whole["rows"][0] = tyre("7", "1.7 mm");
  CHECK(law("GB").second == "1.7 mm: at the 1.6 mm of the law, by a gauge's error");
  whole["rows"][0] = tyre("7", "1.5 mm");
  CHECK(law("GB").second == "1.5 mm: under the 1.6 mm of the law");
  CHECK(law("GB").first == "not fit");
}

TEST_CASE("the scrutineer's list: markings, and those not for the road; age") {
  Json whole = field({tyre("7", "6 mm", "205/55 R16 91V M+S 3PMSF E4"),
                      tyre("8", "6 mm", "205/55 R16 91V NOT FOR HIGHWAY USE"),
                      tyre("9", "6 mm", "205/55 R16 91V FOR COMPETITION USE ONLY"),
                      tyre("10", "6 mm", "205/55 R16 91V FOR COMPETITION USE ONLY")});
  whole["water"] = "0";
  whole["rows"][3]["tyre_kind"] = "wet";
  whole["rows"][0]["date_code"] = "2316";
  whole["rows"][1]["date_code"] = "324";
  const Json a = ask(whole);
  const auto markings = [&](const char* name) { return row_of(a, name, "scrutineer")[3]; };
  CHECK(markings("7") == "snowflake, M+S, approval E4");
  CHECK(markings("8") == "not for highway use");
  CHECK(markings("9") == "for competition only");
  CHECK(row_of(a, "7", "scrutineer")[4] == "10 years, week 23 of 2016");
  CHECK(row_of(a, "8", "scrutineer")[4] == "made before 2000");
  CHECK(row_of(a, "9")[finding] == "care");
  CHECK(row_of(a, "9")[cautions].get<std::string>().find("not for the public road") !=
        std::string::npos);
  CHECK(row_of(a, "10")[cautions].get<std::string>().find("it is a competition tyre") !=
        std::string::npos);
}

TEST_CASE("what holds for all is said once, and what differs with names") {
  const Json a = ask(field({tyre("7"), tyre("8", "2.5 mm"), tyre("9", "2.7 mm")}));
  int standing = 0;
  for (const Json& c : a["cautions"]) {
    const std::string text = c["text"];
    if (c["id"] == "standing_water") {
      ++standing;
      CHECK(text.find("7") == std::string::npos);
    }
    if (c["id"] == "tread_low") CHECK(text.find("8, 9: ") == 0);
  }
  CHECK(standing == 1);
  CHECK(row_of(a, "7")[cautions] == "what is said of all");
}

TEST_CASE("without the unfit the rest may hold to more, and it is said") {
  const Json a = ask(field({tyre("7"), tyre("8", "1 mm")}));
  CHECK(a["hold_to"]["kmh"] == 0.0);
  CHECK(a["hold_to"]["text"] == "Not with the whole field");
  CHECK(says(a, "without_unfit"));
  const std::string said = block(a, "radio")["text"];
  CHECK(said.find("not with all of them") != std::string::npos);
  CHECK(said.find("Not fit: 8.") != std::string::npos);
  CHECK(said.find("The rest: hold to") != std::string::npos);
  CHECK_FALSE(says(ask(field({tyre("7")})), "without_unfit"));
}

TEST_CASE("5 000 rows are read, one more is not; a strange name is clean and short") {
  std::vector<Json> rows;
  for (int i = 0; i < 5001; ++i) rows.push_back(Json{{"name", std::to_string(i)}});
  CHECK(ask(field(rows))["problems"][0]["code"] == "too_many_rows");
  rows.pop_back();
  CHECK(ask(field(rows))["problems"][0]["code"] == "none_read");
  Json whole = field({tyre("7"), tyre(std::string("a\nb\x01") + std::string(200, 'x'))});
  const std::string name = block(ask(whole), "field")["rows"][1][0];
  CHECK(name.find('\n') == std::string::npos);
  CHECK(name.size() < 60);
}

TEST_CASE("a long input is read by this sheet alone, and unknown fields do not pile up") {
  const std::string blank(900000, ' ');
  CHECK(Json::parse(treadwater::json::answer(
            "field-list", "{" + blank + "}"))["problems"][0]["code"] == "missing");
  CHECK(Json::parse(treadwater::json::answer("field-list", blank + blank))["problems"][0]["code"] ==
        "too_long");
  CHECK(Json::parse(treadwater::json::answer("tyre-check", blank))["problems"][0]["code"] ==
        "too_long");
  std::string many = "{";
  for (int i = 0; i < 60000; ++i) many += (i ? ",\"a" : "\"a") + std::to_string(i) + "\":1";
  CHECK(Json::parse(treadwater::json::answer("field-list", many + "}"))["problems"].size() <= 60);
}

TEST_CASE("a long list says how far it has come") {
  static double last;
  static int calls;
  last = -1.0;
  calls = 0;
  std::vector<Json> rows;
  for (int i = 0; i < 400; ++i) rows.push_back(tyre(std::to_string(i)));
  treadwater::json::answer(treadwater::sheets::all_sheets(), "field-list", field(rows).dump(),
                           [](double share) {
                             CHECK(share >= last);
                             CHECK(share <= 1.0);
                             last = share;
                             ++calls;
                           });
  CHECK(calls >= 8);
}

TEST_CASE("lists say how many rows they take and what else their columns are called") {
  const Json description = Json::parse(treadwater::json::describe());
  for (const Json& sheet : description["sheets"])
    for (const Json& list : sheet["fields"]) {
      if (list["kind"] != "list") continue;
      INFO(sheet["id"] << " " << list["id"]);
      CHECK(list["most"] >= 2);
      if (sheet["id"] == "field-list") {
        CHECK(list["most"] == 5000);
        for (const Json& part : list["fields"]) CHECK(part["also"].size() >= 5);
      }
      if (list.contains("row_names")) CHECK(list["most"] == list["row_names"].size());
    }
}
