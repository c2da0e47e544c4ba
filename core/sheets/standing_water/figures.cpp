#include "core/sheets/standing_water/figures.hpp"

#include "core/judge/water.hpp"
#include "core/water/onset.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::standing_water {
namespace {

using Band = AnswerBuilder::Band;

Phrase label_of(water::FilmModel model) {
  switch (model) {
    case water::FilmModel::fhwa_earlier_fit:
      return Phrase("Film by an earlier fit to the same tests");
    case water::FilmModel::road_research:
    case water::FilmModel::road_research_metric:
      return Phrase("Film by the Road Research Laboratory form");
    case water::FilmModel::kinematic:
      return Phrase("Film by the kinematic form");
    case water::FilmModel::fhwa:
    case water::FilmModel::fhwa_metric:
    case water::FilmModel::fhwa_percent:
      break;
  }
  return Phrase("Film by FHWA-RD-79-31");
}

// Below the texture's tops there is no film.
Text write_film(Length film, UnitSystem units) {
  if (film <= Length()) return Phrase("none above the texture");
  return write_water(film, units);
}

void tell_film(const water::RainOnRoad& road, const water::RainFilm& film, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  for (const water::FilmModel model : water::independent_films)
    if (const auto by_model = water::film_depth(model, road))
      answer.figure("film", label_of(model), in_millimetres(*by_model), "mm",
                    write_film(*by_model, units), {&water::film_depth_source(model)});
  answer.figure("film_depth", Phrase("Film above the texture"), in_millimetres(film.central), "mm",
                say("# (# to #)", {write_film(film.central, units), write_film(film.low, units),
                                   write_film(film.high, units)}),
                judge::film_sources(), Phrase("The deepest is taken."),
                Band{in_millimetres(film.low), in_millimetres(film.high)});
}

}  // namespace

Text name(const judge::TyreThrough& tyre, UnitSystem units) {
  return say("#, #", {tyre.kind->label, write_depth(tyre.tread, units)});
}

void tell_rain_word(const standard::RainWord& word, AnswerBuilder& answer) {
  const std::string label = say("Rain called #", {word.label});
  const double low = in_millimetres_per_hour(word.low);
  if (!word.high) {
    answer.figure("rain_word", label, low, "mm/h", say("over # mm/h", {trimmed(low, 1)}),
                  {&word.source});
    return;
  }
  const double high = in_millimetres_per_hour(*word.high);
  answer.figure("rain_word", label, high, "mm/h",
                say("# to # mm/h", {trimmed(low, 1), trimmed(high, 1)}), {&word.source},
                Phrase("The high end is taken."), Band{low, high});
}

void tell_rain(const water::DepthFromRain& rain, AnswerBuilder& answer) {
  if (rain.asked && rain.film) tell_film(*rain.asked, *rain.film, answer);
  if (rain.in_rut)
    answer.figure("rut_water", Phrase("Water that the rut or dip holds"),
                  in_millimetres(*rain.in_rut), "mm", write_water(*rain.in_rut, answer.units()),
                  {&water::rut_source()},
                  Phrase("A dip along the road drains nowhere: measure it."));
}

void tell_footing(const judge::WaterAcross& water, AnswerBuilder& answer) {
  if (!water.given.is_too_deep() && !water.flow.moving) return;
  const auto limits = water::crossing_limits(water.vehicle, water.flow);
  const auto tell = [&](const char* id, Phrase label, Length depth) {
    answer.figure(id, label, in_millimetres(depth), "mm", write_size(depth, answer.units()),
                  judge::crossing_sources());
  };
  tell("stable_to", Phrase("Keeps its footing to at most"), limits.stable_to);
  tell("afloat_at", Phrase("Afloat from"), limits.afloat_at);
}

// Models for trucks and footprints need input that the form does not have.
void tell_onsets(const judge::TyreThrough& worst, const judge::WaterAcross& water,
                 AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  water::OnsetConditions conditions;
  conditions.pressure = worst.pressure;
  conditions.grooves = worst.tread * worst.kind->groove_credit;
  conditions.film = worst.onset->tyre.film.middle();
  conditions.texture = water.surface->texture;
  for (const water::OnsetModel& model : water::onset_models())
    if (const auto onset = model.onset(conditions))
      answer.figure("onset_published", model.label, in_kilometres_per_hour(*onset), "km/h",
                    write(*onset, units), {&model.source},
                    say("#. Not a safe speed.", {model.range}));
  const water::SpeedBand& onset = worst.onset->band;
  Sources sources = judge::onset_sources();
  sources.push_back(&water.surface->source);
  answer.figure(
      "onset_estimate", Phrase("Our estimate of the onset"),
      in_kilometres_per_hour(drawn(onset.central)), "km/h", say_onset(onset, units),
      std::move(sources),
      Phrase("The low and the high are the 5 % and 95 % points of 20 160 draws."),
      Band{in_kilometres_per_hour(drawn(onset.low)), in_kilometres_per_hour(drawn(onset.high))});
}

void tell_chance(double chance, Speed intended, AnswerBuilder& answer) {
  answer.figure("chance", say("Chance of floating at #", {write(intended, answer.units())}), chance,
                "", say("# %", {fixed(100.0 * chance, 0)}), {&water::estimate_source()},
                Phrase("The share of the draws, by our estimate."));
}

void list_field(const judge::CrossingJudged& judged, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  Table table{"field",
              Phrase("The field, worst first"),
              {},
              {Phrase("Tyre"), Phrase("Hold to"), Phrase("Floats from about")},
              {}};
  for (const judge::TyreThrough& tyre : judged.field) {
    const auto speed = tyre.hold_to(units);
    const Text held = tyre.is_bare() ? Text(Phrase("do not enter"))
                      : speed        ? Text(write(*speed, units))
                                     : Text(Phrase("no limit here"));
    table.rows.push_back({say("#, #", {name(tyre, units), write(tyre.pressure, units)}), held,
                          say_onset(tyre.onset->band, units)});
  }
  answer.answer().tables.push_back(std::move(table));
}

}  // namespace treadwater::sheets::standing_water
