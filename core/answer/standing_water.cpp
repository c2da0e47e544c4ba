#include "core/answer/standing_water.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/answer/advice.hpp"
#include "core/answer/teller.hpp"
#include "core/answer/tyre_kind.hpp"
#include "core/quantity/language.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::answer {
namespace {

constexpr Length worn_tread = millimetres(1.6);
constexpr GaugePressure soft_pressure = kilopascals(200.0);
constexpr Length one_lane = metres(3.65);
constexpr double usual_crossfall = 0.025;
// The deepest of any test; beyond it the estimate is carried on.
constexpr Length deepest_measured = millimetres(10.0);

constexpr Source when_it_floats{"when-it-floats", "Road codes on aquaplaning",
                                "ease off the accelerator, steer straight, do not brake hard", "",
                                Standing::secondary};

// One kind of tyre in the field, with the band in which it starts to float.
struct Runner {
  std::string label;
  const TyreKind* kind;
  Length tread;
  GaugePressure pressure;
  std::optional<Length> width;
  water::SpeedBand onset{};
};

class StandingWater : Teller {
 public:
  explicit StandingWater(const Input& input) : Teller(standing_water_sheet(), input) {}

  Answer run() {
    read_form();
    find_depth();
    if (depth_ && surface_ != nullptr) {
      judge_crossing();
      if (entered_ && *depth_ > millimetres(0.0) && !field_.empty()) judge_field();
      advise();
    }
    if (answer_.ok() && depth_) finish();
    return std::move(answer_);
  }

 private:
  void read_form() {
    ruler_ = quantity<Length>("depth");
    pool_ = quantity<Length>("pool");
    one_sided_ = choice("wheels") == "one";
    flow_.moving = yes_no("moving").value_or(false);
    if (const auto id = choice("vehicle")) {
      vehicle_ = *id == "four-wheel" ? water::VehicleKind::four_by_four
                 : *id == "large"    ? water::VehicleKind::large_car
                                     : water::VehicleKind::small_car;
    }
    if (const auto id = choice("surface")) surface_ = standard::find_road_surface(*id);
    intended_ = quantity<Speed>("speed");
    read_tyres();
  }

  void read_tyres() {
    const std::size_t count = rows("tyres");
    for (std::size_t row = 0; row < count; ++row) {
      const auto id = choice(row_path("tyres", row, "tyre_kind"));
      const auto tread = quantity<Length>(row_path("tyres", row, "tread"));
      const auto pressure = quantity<GaugePressure>(row_path("tyres", row, "pressure"));
      const auto width = quantity<Length>(row_path("tyres", row, "width"));
      if (const TyreKind* kind = id ? find_tyre_kind(*id) : nullptr)
        add_runner(*kind, tread.value_or(worn_tread), pressure.value_or(soft_pressure), width);
    }
    if (!field_.empty() || !answer_.ok()) return;
    add_runner(tyre_kinds[0], worn_tread, soft_pressure, {});
    caution("tyre_assumed", Level::note, "",
            filled("No tyre was named, so a road tyre at # and # stands for all that come.",
                   {write_depth(worn_tread, units_), write(soft_pressure, units_)}));
  }

  void add_runner(const TyreKind& kind, Length tread, GaugePressure pressure,
                  std::optional<Length> width) {
    Runner runner{filled("#, #", {kind.label, write_depth(tread, units_)}), &kind, tread, pressure,
                  width};
    field_.push_back(std::move(runner));
  }

  // ---- how deep ----

  void find_depth() {
    const auto by_gauge = quantity<RainIntensity>("rain");
    const auto path = quantity<Length>("path");
    const auto crossfall = number("crossfall");
    const auto grade = number("grade");
    const auto rut = quantity<Length>("rut");
    const auto word = choice("forecast");
    if (ruler_) {
      depth_ = ruler_;
      return;
    }
    if (given("depth")) return;  // given, and wrong: said already
    const standard::RainWord* forecast = word ? standard::find_rain_word(*word) : nullptr;
    auto rain = by_gauge;
    if (!rain && forecast != nullptr) rain = rain_of(*forecast);
    if (!rain && !rut) {
      if (answer_.ok())
        problem("depth", "missing",
                "Depth of water is missing: a ruler's reading such as 8 mm, or else the rain.");
      return;
    }
    const double fall = crossfall ? *crossfall / 100.0 : usual_crossfall;
    depth_ = millimetres(0.0);
    if (rain && *rain > millimetres_per_hour(0.0) && surface_ != nullptr)
      add_film(*rain, path.value_or(one_lane), fall, grade.value_or(0.0) / 100.0);
    if (rut) add_rut(*rut, fall);
  }

  RainIntensity rain_of(const standard::RainWord& word) {
    if (word.high) {
      figure("rain_word", filled("Rain called #", {word.label}),
             in_millimetres_per_hour(*word.high), "mm/h",
             filled("# to # mm/h", {trimmed(in_millimetres_per_hour(word.low), 1),
                                    trimmed(in_millimetres_per_hour(*word.high), 1)}),
             {&word.source}, "The high end is taken.", in_millimetres_per_hour(word.low),
             in_millimetres_per_hour(*word.high));
      return *word.high;
    }
    figure("rain_word", filled("Rain called #", {word.label}), in_millimetres_per_hour(word.low),
           "mm/h", filled("over # mm/h", {trimmed(in_millimetres_per_hour(word.low), 1)}),
           {&word.source});
    caution("rain_open_ended", Level::care, "the forecast's word has no upper end",
            filled("That word starts at # mm/h and has no end. Twice that was taken; ask how much.",
                   {trimmed(in_millimetres_per_hour(word.low), 1)}),
            {&word.source});
    return word.low * 2.0;
  }

  void add_film(RainIntensity rain, Length width, double crossfall, double grade) {
    const water::RainOnRoad road{rain, water::flow_path(width, crossfall, grade), surface_->texture,
                                 water::Pavement::dense_asphalt};
    Sources sources;
    constexpr std::pair<water::FilmModel, const char*> models[] = {
        {water::FilmModel::fhwa, "Film by FHWA-RD-79-31"},
        {water::FilmModel::fhwa_earlier_fit, "Film by an earlier fit to the same tests"},
        {water::FilmModel::road_research, "Film by the Road Research Laboratory form"},
        {water::FilmModel::kinematic, "Film by the kinematic form"}};
    for (const auto& model : models) {
      const auto film = water::film_depth(model.first, road);
      if (!film) continue;
      const Source& source = water::film_depth_source(model.first);
      add_once(sources, source);
      figure("film", model.second, in_millimetres(*film), "mm", film_text(*film), {&source});
    }
    const auto film = surface_->paved ? water::rain_film(road) : std::optional<water::RainFilm>();
    if (!film) {
      caution("film_unknown", Level::care, "no formula gives the film for this rain and road",
              "The film formulas are for paved roads, rain of 0.5 to 150 mm/h and a fall of 0.5 to "
              "10 per cent. Outside that only a ruler tells.",
              sources);
      return;
    }
    depth_ = std::max(millimetres(0.0), film->high);
    figure("film_depth", "Film above the texture", in_millimetres(film->central), "mm",
           filled("# (# to #)",
                  {film_text(film->central), film_text(film->low), film_text(film->high)}),
           sources, "The deepest is taken.", in_millimetres(film->low), in_millimetres(film->high));
    caution(
        "rain_seldom_deep", Level::note, "",
        "Rain alone seldom stands deep on a road that falls to its side: deep water lies in ruts, "
        "dips and at blocked gullies, and only a ruler finds it.",
        sources);
  }

  void add_rut(Length rut, double crossfall) {
    constexpr Length usual_rut_width = metres(0.8);
    const Length held = water::rut_water(rut, usual_rut_width, crossfall);
    figure("rut_water", "Water that the rut or dip holds", in_millimetres(held), "mm",
           write_water(held, units_), {&water::rut_source()},
           "A dip along the road drains nowhere: measure it.");
    depth_ = *depth_ + held;
  }

  // Below the texture's tops there is no film.
  std::string film_text(Length film) const {
    return film <= millimetres(0.0) ? std::string("none above the texture")
                                    : write_water(film, units_);
  }

  // ---- fords and floods ----

  void judge_crossing() {
    const auto limits = water::crossing_limits(vehicle_, flow_);
    const auto found = water::judge_crossing(vehicle_, *depth_, flow_);
    Sources sources{&water::crossing_advice_source()};
    for (const auto& row : water::crossing_figures()) add_once(sources, row.source);
    if (*depth_ >= water::deepest_to_enter || flow_.moving) {
      figure("stable_to", "Keeps its footing to at most", in_millimetres(limits.stable_to), "mm",
             write_size(limits.stable_to, units_), sources);
      figure("afloat_at", "Afloat from", in_millimetres(limits.afloat_at), "mm",
             write_size(limits.afloat_at, units_), sources);
    }
    if (found == water::Crossing::dry || found == water::Crossing::with_caution) return;
    entered_ = false;
    fixed_limit("crossing", flow_.moving ? "Moving water" : "Deep water", kilometres_per_hour(0.0),
                flow_.moving ? "Moving water is not to be entered, however shallow it looks."
                             : "Water of this depth can stall a car, move it or float it.",
                sources);
    const char* text =
        found == water::Crossing::afloat ? "Water this deep floats it. Stop, turn back, report it."
        : found == water::Crossing::unstable
            ? "Water this deep can stall it or take its footing. Stop, turn back, "
              "report it."
        : flow_.moving ? "Do not enter moving water, however shallow it looks. Stop, turn back, "
                         "report it."
                       : "Do not drive into water of 10 cm (4 in) or more. Stop, turn back, "
                         "report it.";
    caution("do_not_enter", Level::unfit,
            flow_.moving ? "the water is moving" : "the water is too deep to drive into", text,
            sources);
  }

  // ---- how fast ----

  water::WetTyre wet(const Runner& runner, Length film) const {
    return {runner.pressure, runner.tread, runner.kind->groove_credit,
            runner.width,    film,         surface_->texture};
  }

  void judge_field() {
    for (Runner& runner : field_) runner.onset = *water::aquaplaning_onset(wet(runner, *depth_));
    std::stable_sort(field_.begin(), field_.end(),
                     [](const Runner& a, const Runner& b) { return a.onset.low < b.onset.low; });
    const Runner& worst = field_.front();
    sources_ = {&water::estimate_source(), &water::film_source(), &water::pressure_only_source(),
                &water::clearing_source()};
    for (const auto& row : water::measured_onsets()) add_once(sources_, row.source);
    sources_.push_back(&surface_->source);

    Limit limit;
    limit.id = "aquaplaning";
    limit.label = filled("Aquaplaning: #", {worst.label});
    limit.central = worst.onset.central;
    limit.low = worst.onset.low;
    limit.high = worst.onset.high;
    limit.share_kept = water::hold_to_share;
    limit.text =
        filled("about #", {band_text(worst.onset.central, worst.onset.low, worst.onset.high)});
    limit.why = filled(
        "# of water can lift the worst tyre here (#) from about #. The hold-to speed "
        "keeps a tenth below it.",
        {write_water(*depth_, units_), worst.label, speed_text(worst.onset.low)});
    limit.sources = sources_;
    add_limit(answer_, std::move(limit));

    published_onsets(worst);
    caution_about_tyres(worst);
    list_field();
    draw_onset(worst);
    draw_chance(worst);
    draw_map(worst);
  }

  // Every published model inside its range; those for trucks and footprints want what is not asked.
  void published_onsets(const Runner& worst) {
    water::OnsetConditions conditions;
    conditions.pressure = worst.pressure;
    conditions.grooves = worst.tread * worst.kind->groove_credit;
    conditions.film = *depth_;
    conditions.texture = surface_->texture;
    for (const water::OnsetModel& model : water::onset_models())
      if (const auto v = model.onset(conditions))
        figure("onset_published", model.label, in_kilometres_per_hour(*v), "km/h", speed_text(*v),
               {&model.source}, filled("#. Not a safe speed.", {model.range}));
    figure("onset_estimate", "Our estimate of the onset",
           in_kilometres_per_hour(worst.onset.central), "km/h",
           filled("about #", {band_text(worst.onset.central, worst.onset.low, worst.onset.high)}),
           sources_, "The low and the high are the 5 % and 95 % points of 20 160 draws.",
           in_kilometres_per_hour(worst.onset.low), in_kilometres_per_hour(worst.onset.high));
  }

  void caution_about_tyres(const Runner& worst) {
    if (worst.kind->groove_credit == 0.0)
      caution("slick_in_water", Level::unfit, "a slick floats on standing water",
              "A slick in any standing water is the worst case there is: nothing clears the water. "
              "Change it, or do not go.",
              {&water::clearing_source()});
    if (*depth_ > deepest_measured)
      caution(
          "beyond_measured_water", Level::care, "the water is deeper than any test",
          "Deeper than any published test (9.5 mm, 3/8 in): the figures are carried on beyond the "
          "measurements.",
          {});
    if (!surface_->paved)
      caution(
          "unpaved", Level::care, "the formulas are for paved roads",
          "The water formulas were made on paved roads. On gravel, earth or grass take them as a "
          "guess.",
          {});
    if (intended_) {
      const double chance = water::OnsetDraws(wet(worst, *depth_)).chance_of_floating(*intended_);
      figure("chance", filled("Chance of floating at #", {speed_text(*intended_)}), chance, "",
             filled("# %", {fixed(100.0 * chance, 0)}), {&water::estimate_source()},
             "The share of the draws, by our estimate.");
      if (*intended_ > worst.onset.low * water::hold_to_share)
        caution(
            "speed_above_hold_to", *intended_ > worst.onset.central ? Level::unfit : Level::care,
            *intended_ > worst.onset.central ? "the speed you intend is past the limit"
                                             : "the speed you intend is above the hold-to speed",
            filled("At # the worst tyre here floats in # of 100 cases.",
                   {speed_text(*intended_), fixed(100.0 * chance, 0)}),
            {&water::estimate_source()});
    }
  }

  Speed held(const Runner& runner) const {
    return floor_to_five(runner.onset.low * water::hold_to_share, units_);
  }

  void list_field() {
    Table table{
        "field", "The field, worst first", "", {"Tyre", "Hold to", "Floats from about"}, {}};
    for (const Runner& runner : field_)
      table.rows.push_back({filled("#, #", {runner.label, write(runner.pressure, units_)}),
                            speed_text(held(runner)),
                            band_text(runner.onset.central, runner.onset.low, runner.onset.high)});
    answer_.tables.push_back(std::move(table));
  }

  // ---- charts ----

  double shown(Speed v) const {
    return units_ == UnitSystem::metric ? in_kilometres_per_hour(v) : in_miles_per_hour(v);
  }
  double shown(Length l) const {
    return units_ == UnitSystem::us ? in_inches(l) : in_millimetres(l);
  }
  Axis speed_axis() const { return {"Speed", units_ == UnitSystem::metric ? "km/h" : "mph"}; }
  Axis water_axis() const { return {"Depth of water", units_ == UnitSystem::us ? "in" : "mm"}; }
  // The depths that charts run over: to half as much again as there is, 10 mm at least.
  Length deepest_drawn() const {
    return std::min(millimetres(60.0), std::max(millimetres(10.0), *depth_ * 1.5));
  }

  void draw_onset(const Runner& worst) {
    Chart chart;
    chart.id = "onset";
    chart.title = "Where it floats, by depth of water";
    chart.text = filled("The worst tyre here (#) with its band, and others of the same pressure.",
                        {worst.label});
    chart.x = water_axis();
    chart.y = speed_axis();
    chart.table.columns = {"Water", "Low", "Estimate", "High"};
    constexpr int steps = 6;
    Series own{"subject", worst.label, {}, {}, {}, {}};
    std::vector<Length> films;
    for (int step = 1; step <= steps; ++step) films.push_back(deepest_drawn() * (step / 6.0));
    for (int step = 0; step < steps; ++step) {
      const Length film = films[static_cast<std::size_t>(step)];
      const auto band = water::aquaplaning_onset(wet(worst, film));
      if (!band) continue;
      own.x.push_back(shown(film));
      own.y.push_back(shown(band->central));
      own.low.push_back(shown(band->low));
      own.high.push_back(shown(band->high));
      if (step % 2 == 1 || step == 0)
        chart.table.rows.push_back({write_water(film, units_), speed_text(band->low),
                                    speed_text(band->central), speed_text(band->high)});
    }
    chart.series.push_back(std::move(own));
    const struct {
      const char* label;
      Length tread;
      double credit;
    } others[] = {{"New, 8 mm", millimetres(8.0), 1.0},
                  {"3 mm", millimetres(3.0), 1.0},
                  {"1.6 mm", millimetres(1.6), 1.0},
                  {"Slick", millimetres(0.0), 0.0}};
    for (const auto& other : others) {
      water::WetTyre tyre = wet(worst, *depth_);
      tyre.groove_credit = other.credit;
      Series series{"reference", other.label, {}, {}, {}, {}};
      const std::vector<Speed> speeds = water::onset_map(tyre, {other.tread}, films);
      for (std::size_t i = 0; i < speeds.size(); ++i) {
        series.x.push_back(shown(films[i]));
        series.y.push_back(shown(speeds[i]));
      }
      chart.series.push_back(std::move(series));
    }
    chart.marks = {{shown(*depth_), shown(worst.onset.central), "You are here"}};
    answer_.charts.push_back(std::move(chart));
  }

  void draw_chance(const Runner& worst) {
    Chart chart;
    chart.id = "chance";
    chart.title = "Chance of floating, by speed";
    chart.text = filled("The share of 20 160 draws in which the worst tyre here floats in #.",
                        {write_water(*depth_, units_)});
    chart.x = speed_axis();
    chart.y = {"Chance", "%"};
    chart.table.columns = {"Speed", "Chance"};
    const water::OnsetDraws draws(wet(worst, *depth_));
    Series series{"subject", worst.label, {}, {}, {}, {}};
    const double unit = units_ == UnitSystem::metric ? 1.0 : kmh_per_mph;
    const double last = 5.0 * std::ceil(shown(draws.at_share(1.0)) / 5.0);
    for (double v = 5.0 * std::floor(shown(draws.at_share(0.0)) / 5.0); v <= last; v += 2.5) {
      const Speed speed = kilometres_per_hour(v * unit);
      const double percent = 100.0 * draws.chance_of_floating(speed);
      series.x.push_back(v);
      series.y.push_back(percent);
      if (std::fmod(v, 10.0) == 0.0)
        chart.table.rows.push_back({speed_text(speed), filled("# %", {fixed(percent, 0)})});
    }
    if (intended_)
      chart.marks = {{shown(*intended_), 100.0 * draws.chance_of_floating(*intended_),
                      "The speed you intend"}};
    chart.series.push_back(std::move(series));
    answer_.charts.push_back(std::move(chart));
  }

  void draw_map(const Runner& worst) {
    Map map;
    map.id = "tread_and_water";
    map.title = "Tread against water";
    map.text =
        "Our central estimate of the onset for this kind of tyre at this pressure; the "
        "hold-to speed is lower.";
    const bool us = units_ == UnitSystem::us;
    map.x = water_axis();
    map.y = {"Tread depth", us ? "1/32 in" : "mm"};
    map.value = speed_axis();
    std::vector<Length> films, treads;
    for (int i = 1; i <= 24; ++i) films.push_back(deepest_drawn() * (i / 24.0));
    for (int i = 0; i <= 16; ++i) treads.push_back(millimetres(0.5 * i));
    for (const Length film : films) map.xs.push_back(shown(film));
    for (const Length tread : treads)
      map.ys.push_back(us ? in_thirty_seconds(tread) : in_millimetres(tread));
    const std::vector<Speed> speeds = water::onset_map(wet(worst, *depth_), treads, films);
    for (std::size_t row = 0; row < treads.size(); ++row) {
      map.values.emplace_back();
      for (std::size_t column = 0; column < films.size(); ++column)
        map.values.back().push_back(std::floor(shown(speeds[row * films.size() + column])));
    }
    map.marks = {{shown(*depth_), us ? in_thirty_seconds(worst.tread) : in_millimetres(worst.tread),
                  "You are here"}};
    answer_.maps.push_back(std::move(map));
  }

  // ---- what to do ----

  void advise() {
    if (*depth_ <= millimetres(0.0)) {
      caution("no_dynamic_aquaplaning", Level::note, "",
              "No water above the texture of the road: no dynamic aquaplaning is expected.");
    } else if (entered_ && !field_.empty()) {
      caution("standing_water", Level::care, "there is standing water",
              "Ease off before it, hold the wheel straight and do not brake in it.");
      caution(
          "when_it_floats", Level::note, "",
          filled(
              "If the steering goes light: ease off the accelerator, keep the wheel straight, no "
              "hard braking: a wheel that has stopped turning floats on down to about #. Dry "
              "the brakes afterwards.",
              {speed_text(water::spin_up_onset(field_.front().pressure))}),
          {&when_it_floats, &water::pressure_only_source()});
      if (one_sided_)
        caution(
            "one_sided", Level::care, "only one side runs through it",
            filled("Water under one side pulls the car that way: up to # of drag was measured in "
                   "puddles up to # deep.",
                   {filled("# kg",
                           {fixed(in_newtons(water::greatest_puddle_drag) / exact::standard_gravity,
                                  0)}),
                    write_size(water::deepest_puddle_measured, units_, 1)}),
            {&water::puddle_drag_source()});
    }
    caution(
        "thin_film", Level::note, "",
        "Wet roads take grip long before a tyre floats, most of all smooth roads and worn tyres: "
        "expect braking distances to double, at any speed.",
        {&thin_film_advice(), &wet_braking_advice()});
  }

  void finish() {
    hold_to();
    conclude("No standing water to float on, as far as these readings tell.",
             "Passable only with care: #.", "Do not drive into it: #.");
    if (!answer_.hold_to) return;
    const bool stop = answer_.hold_to->speed <= kilometres_per_hour(0.0);
    if (stop) answer_.hold_to->text = "Do not drive into it";
    std::string said = plain_spaces(text("where"));
    if (!said.empty()) said += ": ";
    said += filled(flow_.moving ? "moving water, #" : "standing water, #",
                   {write_water(*depth_, units_)});
    if (pool_) said += filled(", # long", {distance_text(*pool_)});
    if (one_sided_) said += worded(", one side");
    if (stop)
      said += worded(". Do not enter. Stop, turn back, report.");
    else
      said += filled(". Worst tyre: #. Hold to #, straight, no braking.",
                     {field_.front().label, spoken_speed(answer_.hold_to->speed)});
    speak(said);
  }

  std::string distance_text(Length l) const {
    return units_ == UnitSystem::us
               ? filled("# ft", {fixed(in_metres(l) / exact::metres_per_foot, 0)})
               : filled("# m", {fixed(in_metres(l), 0)});
  }

  std::optional<Length> ruler_;
  std::optional<Length> pool_;
  std::optional<Length> depth_;  // of water above the texture
  bool one_sided_ = false;
  bool entered_ = true;  // it may be driven into at all
  water::Flow flow_;
  water::VehicleKind vehicle_ = water::VehicleKind::small_car;
  const standard::RoadSurface* surface_ = nullptr;
  std::optional<Speed> intended_;
  std::vector<Runner> field_;
  Sources sources_;
};

}  // namespace

Answer standing_water(const Input& input) { return StandingWater(input).run(); }

Sources standing_water_sources() {
  Sources all = {&water::estimate_source(),      &water::film_source(),
                 &water::pressure_only_source(), &water::clearing_source(),
                 &water::rut_source(),           &water::crossing_advice_source(),
                 &water::puddle_drag_source(),   &thin_film_advice(),
                 &wet_braking_advice(),          &when_it_floats};
  for (const auto& row : water::measured_onsets()) add_once(all, row.source);
  for (const auto& row : water::crossing_figures()) add_once(all, row.source);
  for (const auto& surface : standard::road_surfaces()) add_once(all, surface.source);
  for (const auto& word : standard::rain_words()) add_once(all, word.source);
  for (const auto& model : water::onset_models()) add_once(all, model.source);
  for (const auto model : {water::FilmModel::fhwa, water::FilmModel::fhwa_earlier_fit,
                           water::FilmModel::road_research, water::FilmModel::kinematic})
    add_once(all, water::film_depth_source(model));
  return all;
}

}  // namespace treadwater::answer
