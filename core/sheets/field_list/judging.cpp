#include "core/sheets/field_list/judging.hpp"

#include <algorithm>

#include "core/judge/tread.hpp"
#include "core/judge/verdict.hpp"
#include "core/quantity/text.hpp"
#include "core/sheets/field_list/fields.hpp"
#include "core/sheets/sayings.hpp"
#include "core/standard/instrument.hpp"

namespace treadwater::sheets::field_list {
namespace {

judge::TyreCase read_row(const FormReader::Row& row, const judge::TyreCase& shared) {
  judge::TyreCase tyre = shared;
  tyre.size = row.read(size);
  tyre.load = row.read(load);
  tyre.gauge = row.read(pressure);
  tyre.tread = row.read(tread);
  tyre.kind = row.read(fields::tyre_kind).value_or(nullptr);
  tyre.age = row.tyre_age(date_code, tyre.size);
  return tyre;
}

std::string markings_of(const sidewall::Reading& tyre) {
  std::string text;
  for (const sidewall::Mark& mark : tyre.marks) {
    if (mark.id == "m_s") add_item(text, "M+S");
    if (mark.id == "three_peak") add_item(text, say("snowflake"));
    if (mark.id == "approval") add_item(text, say("approval #", {mark.value}));
    if (mark.id == "tin") add_item(text, "DOT");
    if (mark.id == "racing") add_item(text, say("racing"));
    if (mark.id == "competition") add_item(text, say("for competition only"));
    if (mark.id == "nhs") add_item(text, say("not for highway use"));
  }
  return text;
}

std::string age_of(const standard::TyreAge& age) {
  if (age.before_2000) return say("made before 2000");
  const int years = static_cast<int>(age.least_years);
  return plural("# year, week # of #", "# years, week # of #", years,
                {std::to_string(years), std::to_string(age.week), std::to_string(age.year)});
}

std::string against_the_law(Length tread, const standard::TreadLaw& law, bool under_for_winter,
                            UnitSystem units) {
  const std::string text = say(tread < law.least ? Phrase("#: under the # of the law")
                               : tread <= law.least + standard::tread_gauge_error
                                   ? Phrase("#: at the # of the law, by a gauge's error")
                                   : Phrase("#: over the # of the law"),
                               {write_depth(tread, units), write_depth(law.least, units)});
  return under_for_winter ? say("#; under that for winter", {text}) : text;
}

// Notes on one row's tyre are for its own check; these depend on the water alone.
bool matters_to_the_field(const judge::Found& found) {
  return found.level() != Level::note || found.what == judge::finding::water_not_given ||
         found.what == judge::finding::no_dynamic_aquaplaning ||
         found.what == judge::finding::thin_film;
}

Standing standing_of(Level worst, bool read) {
  if (worst == Level::unfit) return Standing::unfit;
  if (!read) return Standing::unread;
  return worst == Level::care ? Standing::care : Standing::fit;
}

class RowJudge {
 public:
  RowJudge(FormReader& form, const Shared& shared, Field& field)
      : form_(form), shared_(shared), field_(field) {}

  void judge(std::size_t place) {
    Row& row = field_.rows[place];
    const judge::TyreCase tyre = read(row, shared_.tyre);
    const std::vector<Problem> problems = form_.take_problems();
    row.read = problems.empty();
    if (!row.read) ++field_.unread;
    row.faults = joined_texts(problems);
    judge::TyreJudged judged = judge::judge_tyre(tyre);
    conclude(judged, tyre, row.read);
    row.standing = standing_of(judge::verdict(judged.findings, judged.hold).level, row.read);
    for (judge::Found& found : judged.findings.found)
      if (matters_to_the_field(found)) keep(std::move(found), row);
    for (const judge::Limit& limit : judged.findings.limits) keep(limit, place);
    if (judged.hold) {
      row.hold = judged.hold->speed;
      row.governed_by = label(judged.hold->governing, form_.units());
    }
    row.unlimited = judged.no_limit.has_value();
    describe(row, tyre);
  }

  // The lowest of each kind of limit, as the check of that tyre gives it.
  void tell_limits() {
    judge::TyreCase alone = shared_.tyre;
    alone.onsets = nullptr;
    for (const Lowest& lowest : lowest_) {
      const Row& row = field_.rows[lowest.row];
      const judge::TyreCase tyre = read(row, alone);
      const bool whole = form_.take_problems().empty();
      judge::TyreJudged judged = judge::judge_tyre(tyre);
      conclude(judged, tyre, whole);
      for (judge::Limit& limit : judged.findings.limits)
        if (judge::alike(limit, lowest.limit)) {
          limit.of = row.name;
          field_.limits.push_back(std::move(limit));
        }
    }
  }

 private:
  struct Lowest {
    judge::Limit limit;
    std::size_t row;
  };

  judge::TyreCase read(const Row& row, const judge::TyreCase& shared) {
    return read_row(form_.row(rows, row.number - 1), shared);
  }

  // What makes a tyre unfit at any speed does so though the rest of its line cannot be read.
  void conclude(judge::TyreJudged& judged, const judge::TyreCase& tyre, bool whole) const {
    if (whole)
      judge::conclude(judged, tyre, form_.units());
    else
      judge::stop_where_no_speed_helps(judged.findings);
  }

  static std::string joined_texts(const std::vector<Problem>& problems) {
    std::string text;
    for (const Problem& problem : problems) add_item(text, problem.text, " ");
    return text;
  }

  void keep(judge::Found found, Row& row) {
    std::size_t i = 0;
    while (i < field_.said.size() && !judge::same_danger(field_.said[i].first.what, found.what))
      ++i;
    row.said.push_back(i);
    if (i == field_.said.size()) {
      std::string text = sentence(found, form_.units());
      field_.said.push_back({std::move(found), std::move(text)});
    } else if (Said& said = field_.said[i]; said.alike) {
      said.alike = (found.what == said.first.what && found.about.empty() &&
                    found.values == said.first.values) ||
                   sentence(found, form_.units()) == said.sentence;
    }
    ++field_.said[i].rows;
  }

  void keep(const judge::Limit& limit, std::size_t row) {
    for (Lowest& lowest : lowest_)
      if (judge::alike(lowest.limit, limit)) {
        if (limit.kept() < lowest.limit.kept()) lowest = {limit, row};
        return;
      }
    lowest_.push_back({limit, row});
  }

  void describe(Row& row, const judge::TyreCase& tyre) {
    if (tyre.size) {
      row.tyre = tyre.size->canonical;
      row.markings = markings_of(*tyre.size);
    }
    if (tyre.tread) row.tread = write_depth(*tyre.tread, form_.units());
    if (tyre.tread && tyre.law != nullptr)
      row.against_the_law = against_the_law(
          *tyre.tread, *tyre.law,
          std::any_of(
              row.said.begin(), row.said.end(),
              [&](std::size_t i) { return judge::is_winter_law(field_.said[i].first.what); }),
          form_.units());
    if (tyre.age) row.age = age_of(*tyre.age);
  }

  FormReader& form_;
  const Shared& shared_;
  Field& field_;
  std::vector<Lowest> lowest_;
};

// In order of pressure: much of the work is then done once for equal pressures.
std::vector<std::size_t> order_of_work(FormReader& form, const Field& field) {
  std::vector<std::string_view> pressures;
  for (const Row& row : field.rows)
    pressures.push_back(form.row(rows, row.number - 1).text(pressure));
  std::vector<std::size_t> order(field.rows.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const int differ = pressures[a].compare(pressures[b]);
    return differ < 0 || (differ == 0 && a < b);
  });
  return order;
}

}  // namespace

void read_shared(FormReader& form, Shared& shared) {
  judge::TyreCase& tyre = shared.tyre;
  tyre.water = form.road_water(water);
  tyre.surface = form.read(fields::surface).value_or(nullptr);
  tyre.law = form.read(fields::place).value_or(nullptr);
  tyre.hot = form.read(pressure_state);
  tyre.intended = form.read(speed);
  tyre.today = form.today();
  if (!tyre.water || tyre.surface == nullptr) return;
  shared.onsets = judge::onsets_on(*tyre.water, tyre.surface->texture);
  tyre.onsets = shared.onsets.get();
}

Field gather_rows(FormReader& form) {
  constexpr const AnyField* told[] = {&name, &size, &load, &pressure, &tread, &date_code};
  Field field;
  const std::size_t count = form.rows(rows);
  for (std::size_t i = 0; i < count; ++i) {
    const FormReader::Row given = form.row(rows, i);
    if (std::none_of(std::begin(told), std::end(told),
                     [&](const AnyField* one) { return given.given(*one); }))
      continue;
    Row row;
    row.number = i + 1;
    row.name = given.name(name);
    if (row.name.empty()) row.name = say("Line #", {std::to_string(row.number)});
    field.rows.push_back(std::move(row));
  }
  if (field.rows.empty() && form.ok())
    form.problem(rows, "missing",
                 Phrase("The list is empty. A line needs the sidewall text, load, pressure and "
                        "tread."));
  return field;
}

void judge_rows(FormReader& form, const Shared& shared, Field& field) {
  RowJudge one_by_one(form, shared, field);
  std::size_t done = 0;
  for (const std::size_t place : order_of_work(form, field)) {
    one_by_one.judge(place);
    if (done++ % 50 == 0)
      report(form.input().progress,
             static_cast<double>(done) / static_cast<double>(field.rows.size()));
  }
  one_by_one.tell_limits();
}

}  // namespace treadwater::sheets::field_list
