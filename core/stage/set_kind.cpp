#include "core/stage/set_kind.hpp"

#include <algorithm>

namespace treadwater::stage {
namespace {

constexpr Source own_pace{"stage-pace", "Treadwater's own pace figures for kinds of tyre",
                          "ranges against the right tyre; no outside source", "2026",
                          Standing::common_practice};
constexpr Source own_life{"stage-life", "Treadwater's own lives of kinds of tyre",
                          "cautious; no outside source: put in your own", "2026",
                          Standing::common_practice};
constexpr Source soft_life{
    "stage-soft-life", "What crews say of a soft stage tyre",
    "about 12 miles (19 km) in the dry on a driven rear axle; its other lives are ours", "",
    Standing::common_practice};
constexpr Source land_memory{"stage-land", "Void ratios of kinds of tyre, as commonly given",
                             "land ratio = 1 - void ratio", "", Standing::memory};
constexpr Source land_rules{
    "stage-land-rules", "Groove areas asked of moulded competition tyres by event rules",
    "at least 17 % (UK historic stage rallies), 21 % (world level, 2013)", "", Standing::secondary};
constexpr Source own_window{"stage-window", "Treadwater's own temperature windows",
                            "no outside source", "2026", Standing::common_practice};
constexpr Source trade_window{
    "stage-window-trade", "Temperature windows of stage tyres in the trade press",
    "hard above 22 °C, soft 0 to 10 °C; hard gravel above 30 °C", "2022", Standing::secondary};

// Per cent over the right tyre, low and high. `over(a, b)` is safe, `risk(a, b)` is not, `no` is
// not to be used.
struct Percent {
  unsigned char low;
  unsigned char high;
  enum : unsigned char { never, unsafe, safe } use;
};
constexpr Percent over(unsigned char low, unsigned char high) { return {low, high, Percent::safe}; }
constexpr Percent risk(unsigned char low, unsigned char high) {
  return {low, high, Percent::unsafe};
}
constexpr Percent no{0, 0, Percent::never};

struct Row {
  std::string_view id;
  Phrase label;
  Phrase name;
  Phrase why;
  Percent pace[surfaces][weathers];  // dry, damp, wet, standing water, snow, ice
  unsigned char life_km[surfaces][wetnesses];
  unsigned char land_low, land_high;     // per cent
  signed char coolest, hottest;          // °C
  unsigned char new_tread, least_tread;  // tenths of a millimetre
  Roughness roughest;
  bool studded, road_legal;
  const Source* life_known;
  const Source* land_known;
  const Source* window_known;
};

constexpr Row rows[] = {
    {"slick",
     Phrase("Slick"),
     Phrase("slick"),
     Phrase("Fastest on warm dry tarmac. With no grooves it floats on any standing water."),
     {{over(0, 0), over(2, 6), risk(10, 22), risk(25, 60), no, no}, {no, no, no, no, no, no}},
     {{40, 55, 70, 0}, {0, 0, 0, 0}},
     100,
     100,
     10,
     45,
     0,
     0,
     Roughness::smooth,
     false,
     false,
     &own_life,
     &land_memory,
     &own_window},
    {"race",
     Phrase("Race construction, moulded, hard"),
     Phrase("hard race tyre"),
     Phrase("Stiff, made for long dry tarmac stages in warmth. Slow to warm, few grooves."),
     {{over(0, 2), over(1, 4), over(5, 12), risk(15, 35), no, no}, {no, no, no, no, no, no}},
     {{45, 60, 80, 0}, {0, 0, 0, 0}},
     79,
     83,
     22,
     50,
     55,
     16,
     Roughness::broken,
     false,
     true,
     &own_life,
     &land_rules,
     &trade_window},
    {"soft",
     Phrase("Soft stage tyre"),
     Phrase("soft stage tyre"),
     Phrase("Grips at once on cool or damp tarmac. Gone after some 19 km of dry road on a driven "
            "axle."),
     {{over(0, 2), over(0, 2), over(4, 9), risk(12, 25), risk(30, 60), risk(40, 90)},
      {no, no, no, no, no, no}},
     {{19, 30, 45, 30}, {0, 0, 0, 0}},
     79,
     83,
     0,
     10,
     55,
     16,
     Roughness::broken,
     false,
     true,
     &soft_life,
     &land_rules,
     &trade_window},
    {"club",
     Phrase("Club tarmac tyre, road-legal"),
     Phrase("club tarmac tyre"),
     Phrase("Lasts, drives to the start, and forgives a wrong forecast. Never the quickest."),
     {{over(3, 6), over(2, 5), over(3, 8), over(8, 18), risk(25, 50), risk(40, 80)},
      {over(12, 25), risk(15, 30), risk(20, 40), risk(20, 40), risk(25, 50), risk(40, 80)}},
     {{120, 160, 220, 150}, {60, 80, 100, 120}},
     65,
     75,
     -5,
     40,
     70,
     16,
     Roughness::broken,
     false,
     true,
     &own_life,
     &land_memory,
     &own_window},
    {"cut-slick",
     Phrase("Cut slick, intermediate"),
     Phrase("cut slick"),
     Phrase("For a road that is damp or drying. Its cuts clear little: not for standing water."),
     {{over(1, 4), over(0, 1), over(4, 9), risk(12, 25), no, no}, {no, no, no, no, no, no}},
     {{30, 45, 70, 0}, {0, 0, 0, 0}},
     70,
     80,
     0,
     25,
     40,
     0,
     Roughness::broken,
     false,
     false,
     &own_life,
     &land_memory,
     &own_window},
    {"wet",
     Phrase("Full wet"),
     Phrase("full wet"),
     Phrase("Deep grooves clear standing water. On a dry road it overheats and tears up within a "
            "stage."),
     {{over(5, 9), over(2, 4), over(0, 1), over(0, 2), risk(15, 35), risk(40, 90)},
      {over(10, 20), over(10, 20), over(8, 16), over(8, 16), risk(15, 35), risk(40, 90)}},
     {{12, 25, 60, 40}, {15, 25, 40, 40}},
     50,
     65,
     0,
     20,
     80,
     16,
     Roughness::broken,
     false,
     true,
     &own_life,
     &land_memory,
     &own_window},
    {"all-weather",
     Phrase("All-weather, forest and tarmac"),
     Phrase("all-weather tyre"),
     Phrase(
         "One tyre for a mixed stage and an uncertain sky. Seldom the best, seldom badly wrong."),
     {{over(5, 9), over(3, 6), over(3, 7), over(4, 10), over(8, 18), risk(25, 50)},
      {over(3, 7), over(3, 6), over(3, 7), over(4, 8), over(6, 14), risk(25, 50)}},
     {{60, 90, 130, 130}, {60, 80, 100, 120}},
     60,
     70,
     -10,
     30,
     80,
     16,
     Roughness::rough,
     false,
     true,
     &own_life,
     &land_memory,
     &own_window},
    {"gravel-soft",
     Phrase("Gravel, soft"),
     Phrase("soft gravel tyre"),
     Phrase("For cool, damp forest and short stages. Tarmac and hot stones wear it out."),
     {{over(10, 18), over(8, 15), over(6, 12), over(6, 14), over(8, 18), risk(20, 45)},
      {over(1, 3), over(0, 1), over(0, 1), over(0, 2), over(5, 12), risk(20, 45)}},
     {{15, 25, 40, 40}, {35, 50, 60, 60}},
     50,
     60,
     -5,
     30,
     100,
     16,
     Roughness::rough,
     false,
     true,
     &own_life,
     &land_memory,
     &own_window},
    {"gravel-hard",
     Phrase("Gravel, hard"),
     Phrase("hard gravel tyre"),
     Phrase("For hot, stony, long gravel stages. Slow to grip where it is cool or wet."),
     {{over(8, 15), over(9, 16), over(10, 18), over(10, 20), risk(14, 28), risk(30, 60)},
      {over(0, 1), over(1, 3), over(2, 5), over(2, 6), over(8, 18), risk(30, 60)}},
     {{25, 35, 50, 50}, {60, 75, 90, 90}},
     50,
     60,
     30,
     60,
     100,
     16,
     Roughness::rough,
     false,
     true,
     &own_life,
     &land_memory,
     &trade_window},
    {"winter",
     Phrase("Packed snow and ice, unstudded"),
     Phrase("winter tyre without studs"),
     Phrase(
         "Sipes and suction shapes hold packed snow and, less well, ice. Weak and short-lived on "
         "tarmac."),
     {{over(8, 15), over(6, 12), over(5, 10), over(6, 12), over(2, 6), over(10, 22)},
      {over(8, 16), over(6, 12), over(5, 10), over(5, 10), over(1, 4), over(8, 20)}},
     {{30, 45, 70, 150}, {40, 50, 60, 120}},
     60,
     70,
     -30,
     7,
     90,
     16,
     Roughness::broken,
     false,
     true,
     &own_life,
     &land_memory,
     &own_window},
    {"studded",
     Phrase("Studded"),
     Phrase("studded tyre"),
     Phrase("For ice and hard snow. On bare tarmac it slides and the studs tear out."),
     {{over(15, 30), over(12, 25), over(12, 25), over(12, 25), over(0, 1), over(0, 0)},
      {over(6, 12), over(5, 10), over(5, 10), over(5, 10), over(0, 1), over(0, 0)}},
     {{15, 20, 25, 120}, {30, 35, 40, 100}},
     60,
     70,
     -30,
     5,
     90,
     16,
     Roughness::broken,
     true,
     true,
     &own_life,
     &land_memory,
     &own_window},
};
static_assert(std::size(rows) == set_kind_count);

}  // namespace

SetKind set_kind(std::size_t i) {
  const Row& row = rows[i];
  SetKind kind;
  kind.id = row.id;
  kind.label = row.label;
  kind.name = row.name;
  kind.why = row.why;
  for (std::size_t s = 0; s < surfaces; ++s) {
    for (std::size_t w = 0; w < weathers; ++w) {
      const Percent& p = row.pace[s][w];
      if (p.use != Percent::never)
        kind.pace[s][w] = {1.0 + p.low / 100.0, 1.0 + p.high / 100.0, p.use == Percent::safe};
    }
    for (std::size_t w = 0; w < wetnesses; ++w)
      kind.life[s][w] = metres(1000.0 * row.life_km[s][w]);
  }
  kind.undriven_life = 1.5;
  kind.land_low = row.land_low / 100.0;
  kind.land_high = row.land_high / 100.0;
  kind.coolest = celsius(row.coolest);
  kind.hottest = celsius(row.hottest);
  kind.new_tread = millimetres(row.new_tread / 10.0);
  kind.least_tread = millimetres(row.least_tread / 10.0);
  kind.roughest = row.roughest;
  kind.studded = row.studded;
  kind.moulded = kind.id != "slick" && kind.id != "cut-slick";
  kind.road_legal = row.road_legal;
  kind.pace_known = &own_pace;
  kind.life_known = row.life_known;
  kind.land_known = row.land_known;
  kind.window_known = row.window_known;
  return kind;
}

std::optional<SetKind> find_set_kind(std::string_view id) {
  for (std::size_t i = 0; i < set_kind_count; ++i)
    if (rows[i].id == id) return set_kind(i);
  return std::nullopt;
}

double worn(const SetKind& kind, Length left) {
  const double usable = in_metres(kind.new_tread - kind.least_tread);
  if (!(usable > 0.0)) return 0.0;
  return std::clamp(in_metres(kind.new_tread - left) / usable, 0.0, 1.0);
}

Length tread_left(const SetKind& kind, double worn) {
  if (kind.slick()) return Length();
  return kind.new_tread - (kind.new_tread - kind.least_tread) * std::min(1.0, worn);
}

}  // namespace treadwater::stage
