#include "tests/register/register.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <list>

#include "core/air/natural_loss.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "core/grip/friction.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/patch/measured.hpp"
#include "core/sheets/sources.hpp"
#include "core/stage/decision.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/water/measured.hpp"

namespace treadwater::checks {

// ---- units ----

namespace {

template <class Q>
struct Unit {
  std::string_view name;
  Q (*make)(double);
};

template <class Q>
struct Units;

template <>
struct Units<Length> {
  static constexpr Unit<Length> all[] = {
      {"mm", millimetres}, {"m", metres},   {"cm", [](double v) { return metres(v / 100.0); }},
      {"km", kilometres},  {"in", inches},  {"1/32 in", thirty_seconds},
      {"ft", feet},        {"miles", miles}};
};
template <>
struct Units<Area> {
  static constexpr Unit<Area> all[] = {
      {"cm²", square_centimetres},
      {"m²", square_metres},
      {"sq in", [](double v) { return rectangle(inches(1.0), inches(1.0)) * v; }}};
};
template <>
struct Units<Volume> {
  static constexpr Unit<Volume> all[] = {{"l", litres}, {"m³", cubic_metres}};
};
template <>
struct Units<Duration> {
  static constexpr Unit<Duration> all[] = {
      {"s", seconds}, {"min", minutes}, {"days", days}, {"months", months}};
};
template <>
struct Units<Speed> {
  static constexpr Unit<Speed> all[] = {{"km/h", kilometres_per_hour},
                                        {"mph", miles_per_hour},
                                        {"kn", knots},
                                        {"m/s", metres_per_second}};
};
template <>
struct Units<Mass> {
  static constexpr Unit<Mass> all[] = {
      {"kg", kilograms}, {"lb", pounds}, {"cwt", [](double v) { return pounds(112.0 * v); }}};
};
template <>
struct Units<Force> {
  static constexpr Unit<Force> all[] = {{"N", newtons},
                                        {"kN", [](double v) { return newtons(1000.0 * v); }},
                                        {"lbf", [](double v) { return weight(pounds(v)); }},
                                        {"kgf", [](double v) { return weight(kilograms(v)); }}};
};
template <>
struct Units<Stiffness> {
  static constexpr Unit<Stiffness> all[] = {{"N/mm", newtons_per_millimetre},
                                            {"kN/m", newtons_per_millimetre},
                                            {"N/m", Stiffness::stored}};
};
template <>
struct Units<GaugePressure> {
  static constexpr Unit<GaugePressure> all[] = {
      {"kPa", kilopascals}, {"psi", psi}, {"bar", bars}, {"Pa", [](double v) {
                                                            return kilopascals(v / 1000.0);
                                                          }}};
};
template <>
struct Units<AbsolutePressure> {
  static constexpr Unit<AbsolutePressure> all[] = {
      {"kPa", kilopascals_absolute},
      {"bar", [](double v) { return kilopascals_absolute(100.0 * v); }}};
};
template <>
struct Units<RainIntensity> {
  static constexpr Unit<RainIntensity> all[] = {{"mm/h", millimetres_per_hour},
                                                {"in/h", inches_per_hour}};
};
template <>
struct Units<Temperature> {
  static constexpr Unit<Temperature> all[] = {{"°C", celsius}, {"°F", fahrenheit}, {"K", kelvin}};
};
template <>
struct Units<Density> {
  static constexpr Unit<Density> all[] = {{"kg/m³", kilograms_per_cubic_metre}};
};
template <>
struct Units<MassFlow> {
  static constexpr Unit<MassFlow> all[] = {{"kg/s", kilograms_per_second}};
};
template <>
struct Units<car::Inertia> {
  static constexpr Unit<car::Inertia> all[] = {{"kg m²", car::kilogram_square_metres}};
};

}  // namespace

template <class Q>
std::optional<double> stored_of(std::string_view unit, double value) {
  for (const Unit<Q>& u : Units<Q>::all)
    if (u.name == unit) return u.make(value).stored();
  return std::nullopt;
}
template std::optional<double> stored_of<Length>(std::string_view, double);
template std::optional<double> stored_of<Area>(std::string_view, double);
template std::optional<double> stored_of<Volume>(std::string_view, double);
template std::optional<double> stored_of<Duration>(std::string_view, double);
template std::optional<double> stored_of<Speed>(std::string_view, double);
template std::optional<double> stored_of<Mass>(std::string_view, double);
template std::optional<double> stored_of<Force>(std::string_view, double);
template std::optional<double> stored_of<Stiffness>(std::string_view, double);
template std::optional<double> stored_of<GaugePressure>(std::string_view, double);
template std::optional<double> stored_of<AbsolutePressure>(std::string_view, double);
template std::optional<double> stored_of<RainIntensity>(std::string_view, double);
template std::optional<double> stored_of<Temperature>(std::string_view, double);
template std::optional<double> stored_of<Density>(std::string_view, double);
template std::optional<double> stored_of<MassFlow>(std::string_view, double);
template std::optional<double> stored_of<car::Inertia>(std::string_view, double);

// ---- what a check is asked ----

namespace {

// A number at the head of a text, and what stands after it.
struct Head {
  std::optional<double> number;
  std::string rest;
};
Head head_of(const std::string& text) {
  char* end = nullptr;
  const double value = std::strtod(text.c_str(), &end);
  if (end == text.c_str() || !std::isfinite(value)) return {std::nullopt, text};
  const std::size_t used = static_cast<std::size_t>(end - text.c_str());
  const std::size_t next = text.find_first_not_of(' ', used);
  return {value, next == std::string::npos ? std::string() : text.substr(next)};
}

std::string in_words(const Json& value) {
  return value.is_string() ? value.get<std::string>() : value.dump();
}

}  // namespace

void Asked::fail(std::string_view what, std::string_view name) {
  if (error_.empty()) error_ = std::string(what) + std::string(name);
}

const Json* Asked::find(std::string_view name) {
  const auto at = inputs_.find(name);
  if (at == inputs_.end()) {
    fail("an input is missing: ", name);
    return nullptr;
  }
  read_.emplace_back(name);
  return &*at;
}

double Asked::number(std::string_view name) {
  const Json* value = find(name);
  if (value == nullptr) return 0.0;
  if (!value->is_number()) fail("not a number: ", name);
  return value->is_number() ? value->get<double>() : 0.0;
}

std::string Asked::text(std::string_view name) {
  const Json* value = find(name);
  return value == nullptr ? std::string() : in_words(*value);
}

std::vector<double> Asked::numbers(std::string_view name) {
  std::vector<double> all;
  const Json* list = find(name);
  if (list == nullptr) return all;
  for (const Json& value : *list) {
    if (!value.is_number()) fail("not a list of numbers: ", name);
    all.push_back(value.is_number() ? value.get<double>() : 0.0);
  }
  return all;
}

Asked::NumberAndUnit Asked::quantity(std::string_view name) {
  const Head head = head_of(text(name));
  if (!head.number) fail("not a number with its unit: ", name);
  return {head.number.value_or(0.0), head.rest};
}

patch::TyreSize Asked::size(std::string_view name) {
  const Head width = head_of(text(name));
  const Head aspect = head_of(width.rest.substr(std::min<std::size_t>(1, width.rest.size())));
  const Head rim = head_of(aspect.rest.substr(std::min<std::size_t>(1, aspect.rest.size())));
  if (!width.number || !aspect.number || !rim.number || !rim.rest.empty())
    fail("not a size like 205/55-16: ", name);
  return {millimetres(width.number.value_or(0.0)), aspect.number.value_or(0.0),
          inches(rim.number.value_or(0.0))};
}

standard::SpeedSymbol Asked::symbol(std::string_view name) {
  const auto symbol = standard::find_speed_symbol(text(name));
  if (!symbol) fail("no such speed symbol: ", name);
  return symbol.value_or(standard::SpeedSymbol::A1);
}

std::string Asked::error() const {
  if (!error_.empty()) return error_;
  for (const auto& input : inputs_.items())
    if (std::find(read_.begin(), read_.end(), input.key()) == read_.end())
      return "nobody reads the input " + input.key();
  return {};
}

// ---- the checks ----

namespace {

constexpr Checks (*rooms[])() = {quantity_checks, standard_checks, sidewall_checks,
                                 patch_checks,    water_checks,    grip_checks,
                                 air_checks,      car_checks,      stage_checks};

const Check* find_check(std::string_view name) {
  for (const auto room : rooms)
    for (const Check& check : room())
      if (check.name == name) return &check;
  return nullptr;
}

// Those that an answer can name, and those that no answer names yet.
const Source* find_source(std::string_view id) {
  for (const Source* source : sheets::all_sources())
    if (source->id == id) return source;
  const Source* more[] = {&standard::camber_pressure_source(),
                          standard::car_tyre_on_trailer().source,
                          standard::us_trailer_tyre(kilometres_per_hour(100.0))->source,
                          &standard::twinned_car_tyres_source(),
                          &standard::us_car_tyre_on_truck_source(),
                          &standard::low_speed_source(),
                          &standard::commercial_source(),
                          &standard::motorcycle_source(),
                          &standard::motorcycle_measuring_source(),
                          &patch::beaded_edge_today_source(),
                          &patch::beaded_edge_motorcycle_source(),
                          &patch::fitted_area_source(),
                          &patch::patch_band_source(),
                          &grip::handbook_source,
                          &grip::film_share_source,
                          &grip::stop_law_source,
                          &grip::dry_grip_source,
                          &car::speed_tolerance_source(),
                          &stage::regret_source(),
                          &stage::tail_source(),
                          &air::tube_loss_source()};
  for (const Source* source : more)
    if (source->id == id) return source;
  for (const auto& row : water::further_onsets())
    if (row.source.id == id) return &row.source;
  return nullptr;
}

std::optional<Standing> find_standing(std::string_view name) {
  for (const Standing s :
       {Standing::published, Standing::secondary, Standing::memory, Standing::common_practice})
    if (standing_name(s).english() == name) return s;
  return std::nullopt;
}

// A text that outlives the row that points to it: the register is read once a run.
std::string_view kept(const Json& object, const char* key) {
  static std::list<std::string> texts;
  if (!object.contains(key)) return {};
  return texts.emplace_back(in_words(object[key]));
}

// Half the last printed digit: "47.7" 0.05, "3.5558e-4" 0.5e-8, "100" 0.5.
double half_a_digit(const std::string& printed) {
  const std::size_t exponent = printed.find_first_of("eE");
  const std::string digits = printed.substr(0, exponent);
  const std::size_t point = digits.find('.');
  const int decimals = point == std::string::npos ? 0 : static_cast<int>(digits.size() - point - 1);
  const int power = exponent == std::string::npos ? 0 : std::atoi(printed.c_str() + exponent + 1);
  return 0.5 * std::pow(10.0, power - decimals);
}

// A comparison in binary of what was printed in decimals.
double slack(double printed) { return 1e-9 * std::max(1e-9, std::fabs(printed)); }

// A key of the column or, where it has none, of the entry around it.
const Json* key_of(const Json& column, const Json& entry, const char* key) {
  if (column.contains(key)) return &column[key];
  if (entry.contains(key)) return &entry[key];
  return nullptr;
}

struct Told {
  const Json& column;
  const Json& entry;
  std::string text(const char* key) const {
    const Json* value = key_of(column, entry, key);
    return value == nullptr ? std::string() : in_words(*value);
  }
};

std::string set_source(Row& row, const Told& told) {
  const Json* named = key_of(told.column, told.entry, "source");
  if (named == nullptr) return "no source";
  if (named->is_string()) {
    const Source* source = find_source(named->get<std::string>());
    if (source == nullptr) return "the core has no source " + named->get<std::string>();
    row.source = *source;
  } else {
    const auto standing = find_standing(kept(*named, "standing"));
    if (!standing) return "a source without its standing";
    row.source = {"", kept(*named, "title"), kept(*named, "clause"), kept(*named, "year"),
                  *standing};
  }
  // A figure can be known less well than the source it belongs to, never better.
  if (const std::string own = told.text("standing"); !own.empty()) {
    const auto standing = find_standing(own);
    if (!standing) return "no such standing: " + own;
    if (*standing < row.source.standing) return "a better standing than the source's";
    row.source.standing = *standing;
  }
  const std::string known = told.text("known");
  if (!known.empty() && known != "worked out") return "known can only be: worked out";
  row.worked_out = !known.empty();
  return {};
}

std::string set_compare(Row& row, const std::string& word) {
  if (word.empty() || word == "equal")
    row.compare = Compare::equal;
  else if (word == "inside")
    row.compare = Compare::inside;
  else if (word == "at least")
    row.compare = Compare::at_least;
  else if (word == "at most")
    row.compare = Compare::at_most;
  else
    return "no such way to compare: " + word;
  return {};
}

// The tolerance, in the unit of the figure: from the printed digits, or as told and then with a
// reason.
std::string set_tolerance(Row& row, const Told& told, double printed) {
  row.why = told.text("why");
  const Json* own = key_of(told.column, told.entry, "tolerance");
  if (own == nullptr) {
    row.tolerance = row.compare == Compare::equal    ? half_a_digit(row.printed)
                    : row.compare == Compare::inside ? 0.0
                                                     : std::numeric_limits<double>::infinity();
    return row.why.empty() ? std::string() : "a reason, but no tolerance of its own";
  }
  if (row.why.empty()) return "a tolerance of its own without a reason";
  const Head head = head_of(in_words(*own));
  if (!head.number || !(head.rest.empty() || head.rest == "%"))
    return "a tolerance is not a number";
  row.tolerance = head.rest.empty() ? *head.number : *head.number / 100.0 * std::fabs(printed);
  return {};
}

void judge_number(Row& row, double ours, double printed) {
  row.difference = ours - printed;
  const double most = row.tolerance + slack(printed);
  switch (row.compare) {
    case Compare::equal:
      row.agrees = std::fabs(row.difference) <= most;
      break;
    case Compare::at_least:
      row.agrees = row.difference >= -slack(printed) && row.difference <= most;
      break;
    case Compare::at_most:
      row.agrees = row.difference <= slack(printed) && -row.difference <= most;
      break;
    case Compare::inside:
      row.error = "the core gives no band";
  }
}

void judge_band(Row& row, const Band& band, double printed) {
  row.difference = printed < band.low    ? band.low - printed
                   : printed > band.high ? printed - band.high
                                         : 0.0;
  row.agrees = band.low <= printed + row.tolerance + slack(printed) &&
               printed <= band.high + row.tolerance + slack(printed);
  if (row.compare != Compare::inside) row.error = "the core gives a band";
}

void judge(Row& row, const Told& told) {
  const Head head = head_of(row.printed);
  const bool numeric = head.number && head.rest.empty();
  if (const auto* text = std::get_if<std::string>(&row.ours)) {
    row.agrees = *text == row.printed;
    return;
  }
  if (!numeric) return;
  if (row.error = set_tolerance(row, told, *head.number); !row.error.empty()) return;
  if (const double* ours = std::get_if<double>(&row.ours)) judge_number(row, *ours, *head.number);
  if (const Band* band = std::get_if<Band>(&row.ours)) judge_band(row, *band, *head.number);
}

std::string inputs_in_words(const Json& inputs) {
  std::string words;
  for (const auto& input : inputs.items()) {
    if (!words.empty()) words += ", ";
    words += input.key() + " " + in_words(input.value());
  }
  return words;
}

// One printed figure: what is asked of the core is the entry's own inputs, the row's and the
// column's together.
Row one(const Json& column, const Json& entry, Json inputs, const Json& printed) {
  const Told told{column, entry};
  Row row;
  row.entry = told.text("name");
  row.check = told.text("check");
  row.unit = told.text("unit");
  row.printed = in_words(printed);
  if (&column != &entry && column.contains("inputs")) inputs.update(column["inputs"]);
  row.inputs = inputs_in_words(inputs);
  row.error = set_source(row, told);
  if (row.error.empty()) row.error = set_compare(row, told.text("compare"));
  const Check* check = find_check(row.check);
  if (row.error.empty() && check == nullptr) row.error = "there is no check " + row.check;
  if (row.error.empty() && row.entry.empty()) row.error = "an entry without a name";
  if (row.error.empty() && !printed.is_string()) row.error = "not the digits as printed";
  if (!row.error.empty()) return row;
  Asked asked(inputs, row.unit);
  row.ours = check->ask(asked);
  row.error = asked.error();
  if (row.error.empty()) judge(row, told);
  if (!row.error.empty()) row.agrees = false;
  return row;
}

Row broken(const Json& entry, std::string error) {
  Row row;
  row.entry = entry.contains("name") ? in_words(entry["name"]) : "an entry";
  row.error = std::move(error);
  return row;
}

// "rim, in": the input `rim`, its numbers in inches.
void add_input(Json& inputs, const std::string& column, const Json& cell) {
  const std::size_t comma = column.find(", ");
  if (comma == std::string::npos)
    inputs[column] = cell;
  else
    inputs[column.substr(0, comma)] = in_words(cell) + " " + column.substr(comma + 2);
}

// A table: a column is the name of an input, or says of what the printed figure in it is to be
// held against (one thing or several). An empty cell is null.
void add_table(std::vector<Row>& rows, const Json& entry, const Json& inputs) {
  const Json& columns = entry["columns"];
  for (const Json& cells : entry["rows"]) {
    if (!cells.is_array() || cells.size() != columns.size()) {
      rows.push_back(broken(entry, "a row has not as many cells as there are columns"));
      return;
    }
    Json asked = inputs;
    for (std::size_t i = 0; i < columns.size(); ++i)
      if (columns[i].is_string() && !cells[i].is_null())
        add_input(asked, columns[i].get<std::string>(), cells[i]);
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (columns[i].is_string() || cells[i].is_null()) continue;
      if (columns[i].is_array())
        for (const Json& column : columns[i]) rows.push_back(one(column, entry, asked, cells[i]));
      else
        rows.push_back(one(columns[i], entry, asked, cells[i]));
    }
  }
}

bool only_known_keys(const Json& object, std::initializer_list<std::string_view> known,
                     std::string& unknown) {
  for (const auto& item : object.items())
    if (std::find(known.begin(), known.end(), item.key()) == known.end()) {
      unknown = item.key();
      return false;
    }
  return true;
}

// A misspelt key would be passed over in silence.
std::string unknown_key(const Json& entry) {
  std::string unknown;
  if (!only_known_keys(entry,
                       {"name", "source", "standing", "known", "note", "check", "inputs", "unit",
                        "compare", "tolerance", "why", "printed", "columns", "rows"},
                       unknown))
    return unknown;
  if (!entry.contains("columns")) return {};
  for (const Json& column : entry["columns"]) {
    const Json several = column.is_array() ? column : Json::array({column});
    for (const Json& one_of_them : several)
      if (one_of_them.is_object() &&
          !only_known_keys(one_of_them,
                           {"source", "standing", "known", "check", "inputs", "unit", "compare",
                            "tolerance", "why"},
                           unknown))
        return unknown;
  }
  return {};
}

}  // namespace

Room judged(std::string_view file) {
  Room room;
  const Json json = Json::parse(file, nullptr, false);
  if (!json.is_object() || !json.contains("room") || !json.contains("checks")) {
    room.rows.push_back(broken(Json::object(), "not the JSON of a room"));
    return room;
  }
  room.name = in_words(json["room"]);
  room.title = json.contains("title") ? in_words(json["title"]) : room.name;
  for (const Json& entry : json["checks"]) {
    const Json inputs = entry.contains("inputs") ? entry["inputs"] : Json::object();
    if (const std::string key = unknown_key(entry); !key.empty())
      room.rows.push_back(broken(entry, "nobody knows the key " + key));
    else if (entry.contains("columns") && entry.contains("rows"))
      add_table(room.rows, entry, inputs);
    else if (entry.contains("printed"))
      room.rows.push_back(one(entry, entry, inputs, entry["printed"]));
    else
      room.rows.push_back(broken(entry, "neither a printed figure nor a table"));
  }
  return room;
}

std::string judged_json(std::string_view file) {
  const Room room = judged(file);
  Json all = Json::array();
  for (const Row& row : room.rows) {
    Json ours;
    if (const double* number = std::get_if<double>(&row.ours)) ours = *number;
    if (const auto* text = std::get_if<std::string>(&row.ours)) ours = *text;
    if (const Band* band = std::get_if<Band>(&row.ours)) ours = {band->low, band->high};
    all.push_back({{"entry", row.entry},
                   {"inputs", row.inputs},
                   {"check", row.check},
                   {"source", row.source.title},
                   {"standing", standing_name(row.source.standing).english()},
                   {"worked_out", row.worked_out},
                   {"printed", row.printed},
                   {"unit", row.unit},
                   {"ours", ours},
                   {"tolerance", std::isfinite(row.tolerance) ? Json(row.tolerance) : Json()},
                   {"agrees", row.agrees},
                   {"error", row.error}});
  }
  return Json{{"room", room.name}, {"rows", all}}.dump();
}

std::vector<std::string_view> names_of_checks() {
  std::vector<std::string_view> names;
  for (const auto room : rooms)
    for (const Check& check : room()) names.push_back(check.name);
  return names;
}

}  // namespace treadwater::checks
