#include "core/answer/car_check.hpp"

#include <algorithm>
#include <array>

#include "core/answer/teller.hpp"
#include "core/answer/tyre_check.hpp"
#include "core/car/axle_load.hpp"
#include "core/car/rules.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/language.hpp"
#include "core/standard/load_index.hpp"

namespace treadwater::answer {
namespace {

constexpr std::size_t most_corners = 5;
constexpr std::size_t spare = 4;
constexpr std::array<const char*, most_corners> names = {"Front left", "Front right", "Rear left",
                                                         "Rear right", "Spare"};
constexpr GaugePressure temporary_spare_pressure = kilopascals(420.0);
constexpr Source spare_rules{
    "spare-on-board", "The spare: pressure, age and size",
    "handbooks: check it with the others; six and ten years count for it too", "",
    Standing::common_practice};

struct Corner {
  bool given = false;
  std::optional<sidewall::Reading> tyre;
  std::optional<GaugePressure> pressure;
  std::optional<Length> tread;  // the least of those given
  std::optional<Mass> load;
  Answer answer;
};

class CarCheck : Teller {
 public:
  explicit CarCheck(const Input& input) : Teller(car_check_sheet(), input) {}

  Answer run() {
    read_corners();
    read_loads();
    check_corners();
    say_corner_cautions();
    compare_axle(0, 1, "front");
    compare_axle(2, 3, "rear");
    compare_axles();
    judge_top_speed();
    judge_spares_in_use();
    judge_spare();
    judge_beaded_edge();
    list_corners();
    draw_patches();
    if (answer_.ok()) finish();
    return std::move(answer_);
  }

 private:
  Corner& corner(std::size_t row) { return corners_[row]; }
  bool has(std::size_t row) const { return corners_[row].given && corners_[row].tyre; }
  static std::string path(std::size_t row, std::string_view field) {
    return row_path("corners", row, field);
  }

  void read_corners() {
    const std::size_t count = rows("corners");
    std::string missing;
    for (std::size_t row = 0; row < most_corners; ++row) {
      const bool empty =
          row >= count || (!given(path(row, "size")) && !given(path(row, "pressure")) &&
                           !given(path(row, "tread")));
      if (empty && row < spare) add_item(missing, worded(names[row]));
      if (!empty) read_corner(row);
    }
    if (!missing.empty())
      problem("corners", "missing", filled("Still to be filled in: #.", {missing}));
    if (!corners_[spare].given)
      caution(
          "no_spare", Level::note, "",
          "No spare was given, so none was judged. Is there a kit on board, and is it in date?");
  }

  void read_corner(std::size_t row) {
    Corner& c = corner(row);
    c.given = true;
    c.tyre = sidewall_text(path(row, "size"));
    c.pressure = quantity<GaugePressure>(path(row, "pressure"));
    const auto centre = quantity<Length>(path(row, "tread"));
    const auto inner = quantity<Length>(path(row, "tread_inner"));
    const auto outer = quantity<Length>(path(row, "tread_outer"));
    c.load = quantity<Mass>(path(row, "load"));
    for (const auto& tread : {centre, inner, outer})
      if (tread) c.tread = c.tread ? std::min(*c.tread, *tread) : *tread;
    if (!c.tread && row < spare && answer_.ok())
      problem(path(row, "tread"), "missing",
              filled("#: the tread depth is missing. Something like 5 mm would do.", {names[row]}));
    if (inner && centre && outer) judge_wear(row, *inner, *centre, *outer);
  }

  void judge_wear(std::size_t row, Length inner, Length centre, Length outer) {
    const auto pattern = car::wear_pattern(inner, centre, outer);
    if (!pattern || pattern->even()) return;
    const auto say = [&](const char* id, const char* text) {
      caution(id, Level::note, "", filled(text, {names[row]}), {&car::wear_pattern_source()});
    };
    if (pattern->under_inflated)
      say("worn_shoulders",
          "#: both shoulders are worn more than the middle, as on a tyre run soft.");
    if (pattern->over_inflated)
      say("worn_middle",
          "#: the middle is worn more than the shoulders, as on a tyre run too hard.");
    if (pattern->alignment == car::Side::inner)
      say("worn_inside", "#: the inner side is worn more: have the wheel alignment looked at.");
    if (pattern->alignment == car::Side::outer)
      say("worn_outside",
          "#: the outer side is worn more: alignment, or hard cornering. Have it looked at.");
  }

  // A wheel's own load first, then its axle's half, then what the masses give.
  void read_loads() {
    auto front = quantity<Mass>("front_axle");
    auto rear = quantity<Mass>("rear_axle");
    car::CarLoad car;
    const auto kerb = quantity<Mass>("kerb");
    car.front_share = number("front_share").value_or(55.0) / 100.0;
    car.front_people = static_cast<int>(number("front_people").value_or(1.0));
    car.rear_people = static_cast<int>(number("rear_people").value_or(0.0));
    car.boot = quantity<Mass>("boot").value_or(kilograms(0.0));
    car.roof = quantity<Mass>("roof").value_or(kilograms(0.0));
    car.tow_ball = quantity<Mass>("tow_ball").value_or(kilograms(0.0));
    if (kerb) car.kerb = *kerb;
    const auto axles = kerb ? car::axle_loads(car) : std::optional<car::AxleLoads>();
    if (axles && (!front || !rear)) {
      front = front ? front : axles->front;
      rear = rear ? rear : axles->rear;
      caution("axle_loads_worked_out", Level::note, "",
              filled("Axle loads were worked out: # in front, # behind. A weighbridge comes first.",
                     {write(*front, units_), write(*rear, units_)}),
              {&car::axle_load_source()});
    } else if (axles && *front + *rear < *kerb) {
      doubt_the_loads(filled("The axles carry # together, and the car alone is # at the kerb.",
                             {write(*front + *rear, units_), write(*kerb, units_)}));
      front = std::max(*front, axles->front);
      rear = std::max(*rear, axles->rear);
    }
    for (const std::size_t left : {0u, 2u}) {
      auto &one = corner(left).load, &other = corner(left + 1).load;
      const auto& axle = left == 0 ? front : rear;
      if (!one || !other || !axle || !(*one + *other < *axle * 0.95)) continue;
      doubt_the_loads(filled("The wheels carry # together, and their axle #.",
                             {write(*one + *other, units_), write(*axle, units_)}));
      one = std::max(*one, *axle / 2.0);
      other = std::max(*other, *axle / 2.0);
    }
    for (std::size_t row = 0; row < most_corners; ++row) {
      Corner& c = corner(row);
      const auto& axle = row < 2 ? front : rear;
      if (c.given && !c.load && axle) c.load = *axle / 2.0;
      if (row < spare && c.given && !c.load && answer_.ok()) {
        problem(row < 2 ? "front_axle" : "rear_axle", "missing",
                filled("Load on the # axle is missing: from a weighbridge, or from the kerb mass "
                       "below. Something like 800 kg would do.",
                       {row < 2 ? "front" : "rear"}));
        return;
      }
    }
  }

  void doubt_the_loads(std::string_view text) {
    caution("loads_contradict", Level::care, "the loads contradict each other",
            filled("# The tyres were judged by the greater: weigh the car again.", {text}));
  }

  // Each corner by the sheet for one tyre.
  void check_corners() {
    for (std::size_t row = 0; row < most_corners; ++row) {
      Corner& c = corner(row);
      if (!c.given) continue;
      if (!c.tyre || !c.pressure || !c.tread || !c.load) {
        if (row == spare && answer_.ok())
          caution("spare_not_judged", Level::note, "",
                  c.tread ? "The spare was not judged: its load is not known."
                          : "The spare was not judged: its tread depth is missing.");
        continue;
      }
      Input one;
      one.set("today", std::string(text("today")));
      for (const char* shared : {"units", "speed", "water", "tyre_kind", "surface", "place"})
        if (given(shared) && (row != spare || shared != std::string_view("water")))
          one.set(shared, std::string(text(shared)));
      for (const char* own : {"size", "pressure", "pressure_state", "date_code"})
        if (given(path(row, own))) one.set(own, std::string(text(path(row, own))));
      one.set("load", filled("# kg", {fixed(in_kilograms(*c.load), 3)}));
      one.set("tread", filled("# mm", {fixed(in_millimetres(*c.tread), 3)}));
      c.answer = tyre_check(one);
      for (const Problem& p : c.answer.problems) pass_on(row, p);
      if (row == spare) continue;
      for (Limit limit : c.answer.limits) {
        limit.label = filled("#: #", {names[row], limit.label});
        add_limit(answer_, std::move(limit));
      }
    }
    keep_the_lowest();
  }

  // What the sheet for one tyre could not take, beside the field that the person filled in: a tyre
  // that was not judged is never passed over. What all corners share is said once.
  void pass_on(std::size_t row, const Problem& p) {
    const bool own = find_field(sheet_, path(row, p.field)) != nullptr;
    const std::string where = own ? path(row, p.field) : p.field;
    const bool said = std::any_of(
        answer_.problems.begin(), answer_.problems.end(),
        [&](const Problem& other) { return other.field == where && other.code == p.code; });
    if (!said) problem(where, p.code, p.text);
  }

  // Of four alike limits the lowest is enough.
  void keep_the_lowest() {
    std::vector<Limit> kept;
    for (Limit& limit : answer_.limits)
      if (std::none_of(kept.begin(), kept.end(), [&](const Limit& k) { return k.id == limit.id; }))
        kept.push_back(std::move(limit));
    answer_.limits = std::move(kept);
  }

  // What was said of several corners is said once, with the corners named. Words on the sidewall
  // text and the figures' footnotes are for the sheet of one tyre.
  void say_corner_cautions() {
    std::vector<const Caution*> said;
    for (std::size_t row = 0; row < most_corners; ++row)
      for (const Caution& c : corner(row).answer.cautions) {
        // The spare is not asked about the water.
        const bool wanted = c.level != Level::note || c.id == "run_flat" ||
                            (c.id == "water_not_given" && row != spare);
        const bool repeated = std::any_of(said.begin(), said.end(), [&](const Caution* other) {
          return other->id == c.id && other->level == c.level;
        });
        if (!wanted || repeated) continue;
        said.push_back(&c);
        std::string where, within;
        std::size_t corners = 0;
        for (std::size_t other = row; other < most_corners; ++other)
          for (const Caution& again : corner(other).answer.cautions)
            if (again.id == c.id && again.level == c.level)
              add_item(where, worded(names[other])),
                  add_item(within, within_sentence(names[other])), ++corners;
        Caution merged = c;
        // What is wrong with the spare alone does not stop the car.
        if (row == spare) merged.level = std::min(merged.level, Level::care);
        if (corners < spare) {  // what holds for all of them needs no names
          merged.text = filled("#: #", {where, c.text});
          if (!merged.reason.empty()) merged.reason = filled("# (#)", {c.reason, within});
        }
        add_caution(answer_, std::move(merged));
      }
  }

  // ---- between the tyres ----

  void compare_axle(std::size_t left, std::size_t right, const char* axle) {
    if (!has(left) || !has(right)) return;
    const Corner& l = corner(left);
    const Corner& r = corner(right);
    if (l.tyre->temporary_spare || r.tyre->temporary_spare) return;  // has its own rules
    const auto match = car::match_on_axle(*l.tyre, *r.tyre);
    if (match == car::AxleMatch::different_construction || match == car::AxleMatch::different_size)
      caution("mixed_axle", Level::unfit, filled("the # axle has two kinds of tyre", {axle}),
              filled(match == car::AxleMatch::different_construction
                         ? "The # axle has two constructions on it: # and #. They must be the same."
                         : "The # axle has two sizes on it: # and #. They must be the same.",
                     {axle, l.tyre->canonical, r.tyre->canonical}),
              {&car::same_axle_source(), &car::mixing_source()});
    if (sidewall::has_mark(*l.tyre, "three_peak") != sidewall::has_mark(*r.tyre, "three_peak"))
      caution("mixed_winter", Level::care,
              filled("the # axle has a winter tyre on one side only", {axle}),
              filled("The # axle has the snowflake on one side only: on snow and ice, and in the "
                     "cold, its tyres grip unlike each other.",
                     {axle}),
              {&car::mixing_source()});
    if (l.pressure && r.pressure) {
      const auto difference = car::pressure_difference(*l.pressure, *r.pressure);
      if (difference != car::Difference::none)
        caution(
            "uneven_pressure",
            difference == car::Difference::too_great ? Level::unfit : Level::care,
            filled("pressures differ on the # axle", {axle}),
            filled("Pressures on the # axle differ: # on the left, # on the right. Set both alike, "
                   "and find out why.",
                   {axle, write(*l.pressure, units_), write(*r.pressure, units_)}),
            {&car::pressure_difference_source()});
    }
    if (l.tread && r.tread) {
      const auto difference = car::tread_difference(*l.tread, *r.tread);
      if (difference != car::Difference::none)
        caution("uneven_tread", Level::care, filled("treads differ on the # axle", {axle}),
                filled("Treads on the # axle differ: # on the left, # on the right.",
                       {axle, write_depth(*l.tread, units_), write_depth(*r.tread, units_)}),
                {&car::tread_difference_source()});
    }
  }

  void compare_axles() {
    const auto construction = [&](std::size_t left) {
      for (const std::size_t row : {left, left + 1})
        if (has(row) && !corner(row).tyre->temporary_spare) return corner(row).tyre->construction;
      return std::optional<sidewall::Construction>();
    };
    const auto front = construction(0);
    const auto rear = construction(2);
    if (front && rear && !car::may_be_mixed(*front, *rear))
      caution("mixed_construction", Level::unfit, "front and rear constructions may not be mixed",
              filled("# in front and # behind: a radial in front needs radials behind, and a "
                     "bias-belted tyre radials or its like.",
                     {sidewall::construction_name(*front), sidewall::construction_name(*rear)}),
              {&car::mixing_source()});
    const auto least = [&](std::size_t left, std::size_t right) -> std::optional<Length> {
      const auto& l = corner(left).tread;
      const auto& r = corner(right).tread;
      if (!l || !r) return std::nullopt;
      return std::min(*l, *r);
    };
    const auto front_tread = least(0, 1);
    const auto rear_tread = least(2, 3);
    if (front_tread && rear_tread && car::deeper_tread_in_front(*front_tread, *rear_tread))
      caution(
          "deeper_in_front", Level::care, "the deeper treads are in front",
          filled("The deeper treads are in front (# against #). They belong behind: when the rear "
                 "lets go on a wet road the car spins, and no driver catches it.",
                 {write_depth(*front_tread, units_), write_depth(*rear_tread, units_)}),
          {&car::deeper_to_the_rear_source()});
  }

  void judge_top_speed() {
    const auto top = quantity<Speed>("top_speed");
    if (!top) return;
    std::string slow, winter;
    for (std::size_t row = 0; row < spare; ++row) {
      if (!has(row)) continue;
      const auto symbol = patch::speed_symbol(*corner(row).tyre);
      if (!symbol) continue;
      const auto fit =
          car::symbol_fit(*symbol, *top, sidewall::has_mark(*corner(row).tyre, "three_peak"));
      if (fit == car::SymbolFit::too_low) add_item(slow, worded(names[row]));
      if (fit == car::SymbolFit::winter_exception) add_item(winter, worded(names[row]));
    }
    if (!slow.empty())
      caution("symbol_below_car", Level::unfit, "a speed symbol is too low for the car",
              filled("#: the speed symbol is for less than the car's top speed of #.",
                     {slow, speed_text(*top)}),
              {&standard::speed_symbol_source()});
    if (!winter.empty())
      caution(
          "winter_label", Level::care, "winter tyres are slower than the car",
          filled("#: as winter tyres they may be slower than the car in many places, with a label "
                 "of their speed in the driver's view.",
                 {winter}),
          {&car::winter_exception_source()});
  }

  void judge_spares_in_use() {
    std::size_t in_use = 0;
    for (std::size_t row = 0; row < spare; ++row)
      in_use += has(row) && corner(row).tyre->temporary_spare ? 1u : 0u;
    if (in_use > 1)
      caution("two_spares", Level::unfit, "it stands on more than one temporary spare",
              "A car may have one temporary spare on it, never two.", {&spare_rules});
  }

  void judge_spare() {
    if (!has(spare)) return;
    const Corner& s = corner(spare);
    const Sources sources{&spare_rules};
    if (s.tyre->temporary_spare && s.pressure && *s.pressure < temporary_spare_pressure * 0.9)
      caution(
          "spare_soft", Level::care, "the spare is soft",
          filled("The spare has #, and a temporary one wants #: soft it is of no use when it is "
                 "needed.",
                 {write(*s.pressure, units_), write(temporary_spare_pressure, units_)}),
          sources);
    bool same = true;
    for (std::size_t row = 0; row < spare; ++row)
      same = same && has(row) &&
             car::match_on_axle(*s.tyre, *corner(row).tyre) == car::AxleMatch::same;
    if (!same && !s.tyre->temporary_spare)
      caution(
          "spare_differs", Level::note, "",
          "The spare is of another size or kind than the rest: only to reach help, and not on the "
          "driven axle if that can be helped.",
          sources);
  }

  // Held on the rim by pressure alone: by the section and twice the wheel's load, the higher end.
  void judge_beaded_edge() {
    const Sources sources{&patch::beaded_edge_1909_source(), &patch::beaded_edge_1921_source(),
                          &patch::beaded_edge_least_source(),
                          &patch::beaded_edge_practice_source()};
    std::string soft, low;
    for (std::size_t row = 0; row < spare; ++row) {
      const Corner& c = corner(row);
      if (!has(row) || c.tyre->family != sidewall::Family::beaded_edge || !c.pressure ||
          !c.tyre->section_width)
        continue;
      const bool too_soft = *c.pressure < patch::least_pressure_of(*c.tyre, c.load).pressure;
      if (too_soft) add_item(soft, worded(names[row]));
      const auto band = patch::beaded_edge_pressure(
          *c.tyre->section_width, c.load.value_or(Mass()) * 2.0, patch::Wheels::single);
      if (!band) continue;
      figure("beaded_edge", filled("#: pressure for a beaded edge", {names[row]}),
             in_kilopascals(band->high), "kPa",
             filled("# to #", {write(band->low, units_), write(band->high, units_)}), sources,
             "Schedules of 1909 and 1921, and practice today; they disagree, and its maker comes "
             "first.",
             in_kilopascals(band->low), in_kilopascals(band->high));
      if (!too_soft && *c.pressure < band->high) add_item(low, worded(names[row]));
    }
    if (!soft.empty())
      caution("beaded_edge_soft", Level::unfit, "a beaded edge is too soft to stay on its rim",
              filled("#: only pressure holds a beaded edge on its rim, and it has less than any "
                     "schedule asks for.",
                     {soft}),
              sources);
    if (!low.empty())
      caution(
          "beaded_edge_low", Level::care, "a beaded edge has less pressure than some ask for",
          filled("#: only pressure holds a beaded edge on its rim. The schedules disagree; keep to "
                 "the higher, or to its maker's figure.",
                 {low}),
          sources);
  }

  // ---- the list ----

  static const char* word(const Answer& answer) {
    if (!answer.verdict) return "not judged";
    return answer.verdict->level == Level::unfit  ? "not fit"
           : answer.verdict->level == Level::care ? "care"
                                                  : "fit";
  }

  static bool may_be_driven(const Answer& answer) {
    return answer.verdict && answer.verdict->level != Level::unfit;
  }

  void list_corners() {
    Table table{"corners",
                "Corner by corner",
                "",
                {"Corner", "Finding", "Tyre", "Pressure", "Least tread", "Load"},
                {}};
    for (std::size_t row = 0; row < most_corners; ++row) {
      const Corner& c = corner(row);
      if (!c.given || !c.tyre) continue;
      table.rows.push_back(
          {names[row],
           row == spare && c.tyre->temporary_spare && may_be_driven(c.answer) ? "only to reach help"
                                                                              : word(c.answer),
           c.tyre->canonical, c.pressure ? write(*c.pressure, units_) : "",
           c.tread ? write_depth(*c.tread, units_) : "", c.load ? write(*c.load, units_) : ""});
    }
    if (!table.rows.empty()) answer_.tables.push_back(std::move(table));
  }

  // The four patches, to scale, the car moving up the page: land and, at the share measured on one
  // tyre, the grooves in it.
  void draw_patches() {
    constexpr double grooves_share = 0.29;
    constexpr int grooves = 4;
    constexpr double gap = 24.0, card_width = 85.60, card_height = 53.98;
    std::array<std::optional<patch::ContactPatch>, spare> patches;
    double wide = 0.0, high = 0.0;
    for (std::size_t row = 0; row < spare; ++row) {
      const Corner& c = corner(row);
      if (!has(row) || !c.pressure || !c.load || *c.pressure < kilopascals(100.0) ||
          c.tyre->construction != sidewall::Construction::radial)
        return;
      const auto size = patch::nominal_size(*c.tyre);
      const auto rated = patch::greatest_load(*c.tyre);
      if (!size) return;
      patches[row] =
          patch::contact_patch(*size, *c.pressure, *c.load, rated ? rated->mass : *c.load / 0.8);
      wide = std::max(wide, in_millimetres(patches[row]->width));
      high = std::max(high, in_millimetres(patches[row]->length));
    }
    Area all;
    for (const auto& p : patches) all = all + p->area;
    Drawing drawing;
    drawing.id = "four_patches";
    drawing.title = "All that touches the road, to scale";
    drawing.text = filled(
        "Four contact patches of # in all, beside a payment card. Grooves are drawn at "
        "0.29 of the area, as measured on one tyre.",
        {write(all, units_)});
    drawing.width = 2.0 * wide + card_width + 2.0 * gap;
    drawing.height = 2.0 * high + gap;
    for (std::size_t row = 0; row < spare; ++row) {
      const double w = in_millimetres(patches[row]->width);
      const double h = in_millimetres(patches[row]->length);
      const double x = row % 2 == 0 ? wide - w : wide + card_width + 2.0 * gap;
      const double y = row < 2 ? high - h : high + gap;
      drawing.boxes.push_back(
          {x, y, w, h, std::min(w, h) * 0.2, "subject", row == 0 ? "Contact patch" : ""});
      const double groove = w * grooves_share / grooves;
      for (int i = 1; i <= grooves; ++i)
        drawing.boxes.push_back({x + w * i / (grooves + 1) - groove / 2.0, y, groove, h, 0.0,
                                 "detail", row == 0 && i == 1 ? "Groove" : ""});
    }
    drawing.boxes.push_back({wide + gap, (drawing.height - card_height) / 2.0, card_width,
                             card_height, 3.18, "scale", "Payment card"});
    answer_.drawings.push_back(std::move(drawing));
    figure("patches_area", "Four contact patches together", in_square_centimetres(all), "cm²",
           filled("about #", {write(all, units_)}),
           {&patch::contact_area_source(), &patch::measured_patch_source()});
  }

  // No speed is told for a car of which one tyre has none.
  bool speed_known_of_all() const {
    return std::all_of(corners_.begin(), corners_.begin() + spare,
                       [](const Corner& c) { return c.answer.hold_to.has_value(); });
  }

  void finish() {
    if (stop_where_no_speed_helps() || speed_known_of_all())
      hold_to();
    else
      caution("no_speed_told", Level::care, "of one of its tyres no speed can be told",
              "Of one tyre or more no speed can be told, so none is told of the car.");
    conclude("Fit on all four corners, as far as these readings tell.");
    if (!answer_.hold_to) return;
    const std::string speed = spoken_speed(answer_.hold_to->speed);
    const std::string& limit = answer_.limits.front().label;
    if (answer_.hold_to->speed <= kilometres_per_hour(0.0))
      speak(filled("Car not fit: #.", {limit}));
    else if (answer_.verdict->level == Level::unfit)
      speak(filled("Car: # Not above # until that is put right.", {answer_.verdict->text, speed}));
    else
      speak(filled("Car: hold to #. The limit is #.", {speed, limit}));
  }

  std::array<Corner, most_corners> corners_;
};

}  // namespace

Answer car_check(const Input& input) { return CarCheck(input).run(); }

Sources car_check_sources() {
  Sources all = tyre_check_sources();
  for (const Source* source :
       {&car::axle_load_source(), &car::mixing_source(), &car::same_axle_source(),
        &car::pressure_difference_source(), &car::tread_difference_source(),
        &car::deeper_to_the_rear_source(), &car::wear_pattern_source(),
        &car::winter_exception_source(), &standard::speed_symbol_source(),
        &patch::beaded_edge_1909_source(), &patch::beaded_edge_1921_source(),
        &patch::beaded_edge_least_source(), &patch::beaded_edge_practice_source(), &spare_rules,
        &patch::measured_patch_source()})
    add_once(all, *source);
  return all;
}

}  // namespace treadwater::answer
