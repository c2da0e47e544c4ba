#include "core/standard/load_index.hpp"

namespace treadwater::standard {
namespace {

// Kilograms for load index 0, 1, 2, ... 279. Read in full in one public table (a vehicle-dynamics
// library's tyre source file), 108 entries of it in a second one. Three entries of that table break
// the rule that eighty steps of the index are a factor of ten, and are corrected here: 1 (46.2,
// printed 46.5), 169 (5800, printed 5850), 203 (15500, printed 15550).
constexpr double kilograms_of_index[] = {
    45,     46.2,   47.5,   48.7,   50,     51.5,   53,     54.5,   56,     58,     60,     61.5,
    63,     65,     67,     69,     71,     73,     75,     77.5,   80,     82.5,   85,     87.5,
    90,     92.5,   95,     97.5,   100,    103,    106,    109,    112,    115,    118,    121,
    125,    128,    132,    136,    140,    145,    150,    155,    160,    165,    170,    175,
    180,    185,    190,    195,    200,    206,    212,    218,    224,    230,    236,    243,
    250,    257,    265,    272,    280,    290,    300,    307,    315,    325,    335,    345,
    355,    365,    375,    387,    400,    412,    425,    437,    450,    462,    475,    487,
    500,    515,    530,    545,    560,    580,    600,    615,    630,    650,    670,    690,
    710,    730,    750,    775,    800,    825,    850,    875,    900,    925,    950,    975,
    1000,   1030,   1060,   1090,   1120,   1150,   1180,   1215,   1250,   1285,   1320,   1360,
    1400,   1450,   1500,   1550,   1600,   1650,   1700,   1750,   1800,   1850,   1900,   1950,
    2000,   2060,   2120,   2180,   2240,   2300,   2360,   2430,   2500,   2575,   2650,   2725,
    2800,   2900,   3000,   3075,   3150,   3250,   3350,   3450,   3550,   3650,   3750,   3875,
    4000,   4125,   4250,   4375,   4500,   4625,   4750,   4875,   5000,   5150,   5300,   5450,
    5600,   5800,   6000,   6150,   6300,   6500,   6700,   6900,   7100,   7300,   7500,   7750,
    8000,   8250,   8500,   8750,   9000,   9250,   9500,   9750,   10000,  10300,  10600,  10900,
    11200,  11500,  11800,  12150,  12500,  12850,  13200,  13600,  14000,  14500,  15000,  15500,
    16000,  16500,  17000,  17500,  18000,  18500,  19000,  19500,  20000,  20600,  21200,  21800,
    22400,  23000,  23600,  24300,  25000,  25750,  26500,  27250,  28000,  29000,  30000,  30750,
    31500,  32500,  33500,  34500,  35500,  36500,  37500,  38750,  40000,  41250,  42500,  43750,
    45000,  46250,  47500,  48750,  50000,  51500,  53000,  54500,  56000,  58000,  60000,  61500,
    63000,  65000,  67000,  69000,  71000,  73000,  75000,  77500,  80000,  82500,  85000,  87500,
    90000,  92500,  95000,  97500,  100000, 103000, 106000, 109000, 112000, 115000, 118000, 121000,
    125000, 128500, 132000, 136000,
};

constexpr Source source{"load-index", "Load index and the mass it stands for (UN R30, UN R54)",
                        "whole table read in a public vehicle-dynamics library; clause not seen",
                        "", Standing::secondary};

}  // namespace

std::optional<Mass> load_of_index(int load_index) {
  if (load_index < 0 || load_index > greatest_load_index) return std::nullopt;
  return kilograms(kilograms_of_index[load_index]);
}

int nearest_load_index(Mass load) {
  int best = 0;
  double least_gap = -1.0;
  for (int i = 0; i <= greatest_load_index; ++i) {
    const double gap = in_kilograms(load) > kilograms_of_index[i]
                           ? in_kilograms(load) - kilograms_of_index[i]
                           : kilograms_of_index[i] - in_kilograms(load);
    if (least_gap < 0.0 || gap < least_gap) best = i, least_gap = gap;
  }
  return best;
}

const Source& load_index_source() { return source; }

}  // namespace treadwater::standard
