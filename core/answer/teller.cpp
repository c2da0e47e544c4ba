#include "core/answer/teller.hpp"

#include <algorithm>

#include "core/answer/tyre_age.hpp"
#include "core/quantity/language.hpp"

namespace treadwater::answer {

Teller::Teller(const SheetDescription& sheet, const Input& input) : sheet_(sheet), input_(input) {
  answer_.sheet = std::string(sheet.head.id);
  refuse_unknown_fields(sheet, input, answer_);
  if (const auto id = choice("units")) units_ = *find_unit_system(*id);
  read_today();
}

const Field& Teller::field(std::string_view path) const {
  const Field* found = find_field(sheet_, path);
  return found != nullptr ? *found : sheet_.fields.front();
}

bool Teller::given(std::string_view path) const { return !plain_spaces(text(path)).empty(); }

std::optional<double> Teller::stored_quantity(std::string_view path) {
  const Field& f = field(path);
  if (!f.quantity || (!f.required && !given(path))) return std::nullopt;
  auto read = read_stored(text(path), *f.quantity);
  if (read) return *read;
  problem(path, read.error().code, read.error().text);
  return std::nullopt;
}

std::optional<double> Teller::number(std::string_view path) { return stored_quantity(path); }

std::optional<std::string_view> Teller::choice(std::string_view path) {
  const Field& f = field(path);
  const std::string said = plain_spaces(text(path));
  const std::string_view wanted = said.empty() ? f.initial : std::string_view(said);
  if (wanted.empty()) {
    if (f.required) problem(path, "missing", filled("# is missing: choose one.", {f.label}));
    return std::nullopt;
  }
  std::string values;
  for (const Choice& choice : f.choices) {
    if (choice.value == wanted) return choice.value;
    add_item(values, choice.value);
  }
  problem(
      path, "unknown_choice",
      filled("#: # is not one of the choices. They are #.", {f.label, in_quotes(said), values}));
  return std::nullopt;
}

std::optional<bool> Teller::yes_no(std::string_view path) {
  const Field& f = field(path);
  const std::string said = plain_spaces(text(path));
  const std::string_view wanted = said.empty() ? f.initial : std::string_view(said);
  if (wanted == "yes") return true;
  if (wanted == "no") return false;
  if (!wanted.empty())
    problem(path, "unknown_choice",
            filled("#: # is neither yes nor no.", {f.label, in_quotes(said)}));
  return std::nullopt;
}

std::optional<Date> Teller::date(std::string_view path) {
  const Field& f = field(path);
  const std::string said = plain_spaces(text(path));
  if (said.empty()) {
    if (f.required)
      problem(path, "missing", filled("# is missing. A date like 2026-11-25 would do.", {f.label}));
    return std::nullopt;
  }
  const auto read = read_iso_date(said);
  if (!read)
    problem(path, "not_a_date",
            filled("#: # is not a date like 2026-11-25.", {f.label, in_quotes(said)}));
  return read;
}

std::size_t Teller::rows(std::string_view list) {
  const std::size_t most = field(list).most_rows;
  const std::size_t count = input_.rows(list);
  if (count <= most) return count;
  problem(list, "too_many_rows",
          filled("#: # rows, and at most # are read.",
                 {field(list).label, std::to_string(count), std::to_string(most)}));
  return 0;
}

std::optional<sidewall::Reading> Teller::sidewall_text(std::string_view path) {
  if (!given(path)) {
    const Field& asked = field(path);
    if (asked.required)
      problem(path, "missing",
              filled("# is missing. Something like # would do.", {asked.label, asked.example}));
    return std::nullopt;
  }
  auto reading = sidewall::read(text(path));
  if (reading) return std::move(*reading);
  const sidewall::Trouble& trouble = reading.error();
  std::string said = trouble.text;
  if (!trouble.nearest.empty() && said.find(trouble.nearest) == std::string::npos)
    said += filled(" Did you mean #?", {trouble.nearest});
  problem(path, trouble.code, said);
  return std::nullopt;
}

void Teller::read_today() {
  const std::string said = plain_spaces(text("today"));
  const auto read = read_iso_date(said);
  today_ = read ? *read : today_by_the_clock();
  if (!read && !said.empty())
    problem("today", "not_a_date",
            filled("Today: # is not a date like 2026-11-25.", {in_quotes(said)}));
}

std::optional<TyreAge> Teller::tyre_age(std::string_view path,
                                        const std::optional<sidewall::Reading>& tyre) {
  std::optional<TyreAge> oldest;
  const std::string typed = plain_spaces(text(path));
  for (const std::string& code : {typed, tyre ? tyre->date_code : std::string()}) {
    if (code.empty()) continue;
    const auto age = read_date_code(code, today_);
    if (!age) {
      problem(path, age.error().code, age.error().text);
      return std::nullopt;
    }
    if (!oldest || age->least_years > oldest->least_years) oldest = *age;
  }
  return oldest;
}

void Teller::problem(std::string_view path, std::string_view code, std::string_view text) {
  answer_.problems.push_back({std::string(path), std::string(code), std::string(text)});
}

void Teller::caution(const char* id, Level level, std::string_view reason, std::string_view text,
                     SomeSources sources) {
  add_caution(answer_, {id, level, std::string(reason), std::string(text), sources.kept()});
}

void Teller::caution(std::optional<Caution> said) {
  if (said) add_caution(answer_, std::move(*said));
}

void Teller::caution_of_marked_age(const sidewall::Reading& tyre) {
  if (tyre.date_code.empty()) return;
  if (const auto read = read_date_code(tyre.date_code, today_))
    caution(caution_of_age(read->least_years));
}

void Teller::figure(const char* id, std::string_view label, double value, const char* unit,
                    std::string_view text, SomeSources sources, std::string_view note,
                    std::optional<double> low, std::optional<double> high) {
  answer_.figures.push_back({id, std::string(label), value, unit, low, high, std::string(text),
                             std::string(note), sources.kept()});
}

void Teller::fixed_limit(const char* id, std::string_view label, Speed speed, std::string_view why,
                         SomeSources sources) {
  add_limit(answer_, {id, std::string(label), speed, speed, speed, 1.0,
                      speed > kilometres_per_hour(0.0) ? speed_text(speed) : "not at any speed",
                      std::string(why), sources.kept()});
}

void Teller::speak(std::string_view text) {
  answer_.spoken.push_back({"radio", "To read out", std::string(text)});
}

std::string Teller::band_text(Speed central, Speed low, Speed high) const {
  return filled("# (#)", {speed_text(central), write_speed_range(low, high, units_)});
}

std::string Teller::spoken_speed(Speed v) const {
  return units_ == UnitSystem::metric
             ? filled("# kilometres an hour", {fixed(in_kilometres_per_hour(v), 0)})
             : filled("# miles an hour", {fixed(in_miles_per_hour(v), 0)});
}

bool Teller::stop_where_no_speed_helps() {
  // What driving slower cures, or is driven to the nearest pump to be put right.
  constexpr std::string_view cured[] = {"speed_above_symbol", "pressure_low_for_speed",
                                        "overload_at_speed", "symbol_below_car", "uneven_pressure"};
  const auto stopped = [this] {
    return !answer_.limits.empty() && !(answer_.limits.front().low > kilometres_per_hour(0.0));
  };
  for (const Caution& c : answer_.cautions)
    if (!stopped() && c.level == Level::unfit &&
        std::find(std::begin(cured), std::end(cured), c.id) == std::end(cured))
      fixed_limit(c.id.c_str(), c.reason, kilometres_per_hour(0.0), c.text, c.sources);
  return stopped();
}

void Teller::hold_to() {
  if (answer_.limits.empty()) return;
  const Limit& governing = answer_.limits.front();
  const Speed held = floor_to_five(governing.low * governing.share_kept, units_);
  HoldTo hold{held, speed_text(held), governing.id, governing.why};
  if (held <= kilometres_per_hour(0.0))
    hold.text = governing.id == "aquaplaning" || governing.id == "slick_in_water"
                    ? "Do not drive into it"
                    : "Do not drive on it yet";
  else if (governing.id == "speed_symbol")
    hold.why +=
        worded(" Nothing else that was judged bites first; the road's own limit comes before it.");
  answer_.hold_to = std::move(hold);
}

void Teller::conclude(std::string_view fit, const char* care, const char* unfit) {
  Level worst = Level::note;
  for (const Caution& c : answer_.cautions) worst = std::max(worst, c.level);
  std::string reasons;
  int count = 0;
  for (const Caution& c : answer_.cautions)
    if (c.level == worst && !c.reason.empty() && count++ < 3)
      add_item(reasons, worded(c.reason), worded("; "));
  // What may not be driven at all is not fit, however little it lacks.
  if (worst == Level::care && answer_.hold_to &&
      !(answer_.hold_to->speed > kilometres_per_hour(0.0)))
    worst = Level::unfit;
  Verdict verdict{worst, std::string(fit)};
  if (worst == Level::care) verdict.text = filled(care, {reasons});
  if (worst == Level::unfit) verdict.text = filled(unfit, {reasons});
  answer_.verdict = std::move(verdict);
}

}  // namespace treadwater::answer
