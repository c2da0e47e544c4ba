// The sheet `standing-water`: how deep it is, by a ruler or from the rain, whether it may be
// entered, and how fast each kind of tyre may go through.
#include "core/sheets/sheet.hpp"

#include "core/judge/crossing.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/standing_water/charts.hpp"
#include "core/sheets/standing_water/fields.hpp"
#include "core/sheets/standing_water/figures.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::standing_water {

extern const SheetHead head;
const SheetHead head{"standing-water", Phrase("Standing water"),
                     Phrase("How deep is it, by a ruler or from the rain, and how fast may each "
                            "kind of tyre come through?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(where), sheets::describe(fields::wetness),
       sheets::describe(depth), sheets::describe(pool), sheets::describe(wheels),
       sheets::describe(moving), sheets::describe(vehicle), sheets::describe(fields::surface),
       sheets::describe(tyres, {also(sheets::describe(fields::tyre_kind), column::tyre_kind),
                                also(sheets::describe(tread), column::tread),
                                also(sheets::describe(pressure), column::pressure),
                                also(sheets::describe(width), column::width)}),
       sheets::describe(speed), sheets::describe(forecast), sheets::describe(rain),
       sheets::describe(path), sheets::describe(crossfall), sheets::describe(grade),
       sheets::describe(rut)},
      {"example",
       Phrase("An invented case: the Saltmarsh Club's stage Long Meadow, after a cloudburst"),
       Phrase("A pool across the lane; the field runs club tarmac tyres and cut slicks."),
       {{"where", "Long Meadow, kilometre 7"},
        {"depth", "8 mm"},
        {"pool", "12 m"},
        {"tyres.0.tyre_kind", "road"},
        {"tyres.0.tread", "4 mm"},
        {"tyres.0.pressure", "2.1 bar"},
        {"tyres.1.tyre_kind", "cut-slick"},
        {"tyres.1.tread", "3 mm"},
        {"tyres.1.pressure", "1.9 bar"}}}};
  return sheet;
}

namespace {

namespace finding = judge::finding;

struct Asked {
  std::optional<Length> pool_length{};
  std::optional<Speed> intended{};
  judge::WaterAcross water{};
  std::vector<judge::TyreThrough> field{};
};

void read_field(FormReader& form, Asked& asked, judge::Findings& findings) {
  const std::size_t count = form.rows(tyres);
  for (std::size_t i = 0; i < count; ++i) {
    const FormReader::Row row = form.row(tyres, i);
    judge::TyreThrough tyre = judge::worn_road_tyre();
    tyre.kind = row.read(fields::tyre_kind).value_or(nullptr);
    tyre.tread = row.read(tread).value_or(tyre.tread);
    tyre.pressure = row.read(pressure).value_or(tyre.pressure);
    tyre.width = row.read(width);
    if (tyre.kind != nullptr) asked.field.push_back(tyre);
  }
  if (!asked.field.empty() || !form.ok()) return;
  const judge::TyreThrough taken = judge::worn_road_tyre();
  asked.field.push_back(taken);
  findings.add(finding::tyre_assumed, {judge::Value::depth(taken.tread), taken.pressure});
}

Asked read(FormReader& form, judge::Findings& findings) {
  Asked asked;
  judge::WaterAcross& water = asked.water;
  water.given = form.road_water(depth).value_or(judge::RoadWater{});
  asked.pool_length = form.read(pool);
  water.one_sided = form.read(wheels).value_or(false);
  water.flow.moving = form.read(moving).value_or(false);
  water.vehicle = form.read(vehicle).value_or(water.vehicle);
  water.surface = form.read(fields::surface).value_or(nullptr);
  asked.intended = form.read(speed);
  read_field(form, asked, findings);
  return asked;
}

// If it was not measured. Nothing if rain and ruts are not given either.
std::optional<water::DepthFromRain> read_rain(FormReader& form, const Asked& asked,
                                              AnswerBuilder& answer, judge::Findings& findings) {
  water::RoadInRain road;
  road.rain = form.read(rain);
  road.way = form.read(path).value_or(road.way);
  if (const auto fall = form.read(crossfall)) road.crossfall = *fall / 100.0;
  road.grade = form.read(grade).value_or(0.0) / 100.0;
  road.rut = form.read(rut);
  road.surface = asked.water.surface;
  const standard::RainWord* word = form.read(forecast).value_or(nullptr);
  if (form.given(depth)) return std::nullopt;
  if (!road.rain && word != nullptr) {
    road.rain = water::rain_to_reckon_with(*word);
    tell_rain_word(*word, answer);
    judge::judge_rain_word(*word, findings);
  }
  if (!road.rain && !road.rut) return std::nullopt;
  if (road.surface == nullptr) road.rain.reset();  // a problem already
  return water::depth_from_rain(road);
}

// Is it known, or irrelevant? A problem if it is needed and was not given.
bool find_depth(FormReader& form, Asked& asked, AnswerBuilder& answer, judge::Findings& findings) {
  judge::RoadWater& given = asked.water.given;
  if (const auto from_rain = read_rain(form, asked, answer, findings)) {
    given.depth = from_rain->water();
    given.may_be_deeper = from_rain->may_be_deeper();
    tell_rain(*from_rain, answer);
    judge::judge_rain(*from_rain, findings);
    return true;
  }
  if (given.is_known()) return true;
  if (form.given(depth)) return false;       // and wrong: said already
  if (asked.water.flow.moving) return true;  // refused whatever the depth
  if (form.ok())
    form.problem(depth, "missing",
                 Phrase("Depth of water is missing: a ruler's reading such as 8 mm, a word for how "
                        "wet it is, or else the rain."));
  return false;
}

std::string describe_water(const Asked& asked, const Typed& place, UnitSystem units) {
  const judge::WaterAcross& water = asked.water;
  const std::string deep = write_water(water.depth(), units);
  std::string said = water.flow.moving
                         ? water.stands() ? say("moving water, #", {deep}) : say("moving water")
                     : !water.given.depth || !water.stands() ? say_water(water.given, units)
                     : water.given.may_be_deeper ? say("standing water, # or more", {deep})
                                                 : say("standing water, #", {deep});
  if (!place.empty()) said = say("#: #", {place, said});
  if (asked.pool_length)
    said = say("#, # long", {said, write_whole_distance(*asked.pool_length, units)});
  return water.one_sided ? say("#, one side", {said}) : said;
}

// Nothing if no speed is to be told.
std::string read_out(const Asked& asked, const judge::CrossingJudged& judged,
                     const std::optional<judge::HoldTo>& hold, const judge::Limit* puddles,
                     const Typed& place, UnitSystem units) {
  const std::string water = describe_water(asked, place, units);
  if (judged.has_bare())
    return say("#. A slick floats on it: do not enter. Stop, turn back, report.", {water});
  if (hold && hold->stands_still())
    return say("#. Do not enter. Stop, turn back, report.", {water});
  const std::string in_puddles =
      puddles == nullptr ? std::string() : say_puddles_aloud(*puddles, units);
  if (hold)
    return sentences(
        {say("#. Worst tyre: #. Hold to #, straight, no braking.",
             {water, name(judged.field.front(), units), say_speed_aloud(hold->speed, units)}),
         in_puddles});
  if (in_puddles.empty() || asked.water.given.may_be_deeper) return {};
  return say("#. #", {water, in_puddles});
}

void tell(const judge::CrossingJudged& judged, const Asked& asked, AnswerBuilder& answer) {
  tell_footing(asked.water, answer);
  if (judged.field.empty()) return;
  const judge::TyreThrough& worst = judged.field.front();
  if (!worst.onset) return;
  tell_onsets(worst, asked.water, answer);
  if (judged.chance) tell_chance(*judged.chance, *asked.intended, answer);
  list_field(judged, answer);
  Answer& blocks = answer.answer();
  blocks.charts.push_back(onset_by_depth(worst, asked.water, answer.units()));
  if (auto chart = chance_by_speed(worst, asked.intended, answer.units()))
    blocks.charts.push_back(std::move(*chart));
  blocks.maps.push_back(tread_against_water(worst, asked.water, answer.units()));
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  judge::Findings findings;
  Asked asked = read(form, findings);
  const bool known = find_depth(form, asked, answer, findings);
  judge::CrossingJudged judged;
  if (known && asked.water.surface != nullptr) {
    judged =
        judge::judge_crossing(asked.water, asked.field, asked.intended, answer.units(), findings);
    tell(judged, asked, answer);
  }
  const bool whole = form.ok() && known;
  answer.take_problems(form);
  answer.tell(findings);
  if (!whole) return answer.take();
  const auto hold = judge::hold_to(findings, answer.units());
  answer.tell(hold, judge::no_limit(findings, answer.units()));
  answer.conclude(judge::verdict(findings, hold),
                  {judged.field.empty() || !judged.field.front().onset
                       ? Phrase("No standing water to float on, as far as these readings tell.")
                       : Phrase("Passable, as far as these readings tell."),
                   Phrase("Passable only with care: #."), Phrase("Do not drive into it: #.")});
  const std::string spoken =
      read_out(asked, judged, hold, findings.beside(), Typed(form.text(where)), answer.units());
  if (!spoken.empty()) answer.speak(spoken);
  return answer.take();
}

}  // namespace treadwater::sheets::standing_water
