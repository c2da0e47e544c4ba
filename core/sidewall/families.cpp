#include "core/sidewall/families.hpp"

namespace treadwater::sidewall {
namespace {

// ---- shapes -------------------------------------------------------------------------------------

constexpr ShapeRow shapes[] = {
    {Shape::metric, Shape::metric, true,
     pattern("{prefix?}{width_mm}/{series}{stray?} {build?}{on_cycle?}{rim}")},
    {Shape::metric_rim_mm, Shape::metric_rim_mm, true,
     pattern("{width_mm}/{series} {build}{rim_mm}")},
    {Shape::no_series, Shape::no_series, true, pattern("{width_mm}{stray?} {build}{rim}")},
    {Shape::no_series_crossed, Shape::no_series_crossed, false, pattern("{width_mm}{cross}{rim}")},
    {Shape::no_series_rim_mm, Shape::no_series_rim_mm, true, pattern("{width_mm} {build}{rim_mm}")},
    {Shape::crossed_rim_mm, Shape::crossed_rim_mm, false, pattern("{width_mm}{cross}{rim_mm}")},
    {Shape::crossed_rim_cm, Shape::crossed_rim_cm, false, pattern("{width_cm}{cross}{rim_mm}")},
    {Shape::outer_metric, Shape::outer_metric, true, pattern("{width_mm}/{outer_mm} {build}{rim}")},
    {Shape::outer_dashed, Shape::outer_dashed, true,
     pattern("{width_mm}-{outer_mm} {build}{rim_mm}")},
    {Shape::flotation, Shape::flotation, true,
     pattern("{prefix?}{outer_in}X{width_in} {build}{rim}")},
    {Shape::flotation_slash, Shape::flotation, true,
     pattern("{prefix?}{outer_in}/{width_in} {build}{rim}")},
    {Shape::flotation_slashes, Shape::flotation_slashes, false,
     pattern("{outer_in}/{width_in}/{rim}")},
    {Shape::inch, Shape::inch, true, pattern("{width_in}{low_section?} {build}{rim}")},
    {Shape::inch_pointless, Shape::inch, false,
     pattern("{width_hundredths}{low_section?} {build}{rim}")},
    {Shape::inch_crossed, Shape::inch_crossed, false, pattern("{width_in}{cross}{rim}")},
    {Shape::inch_pointless_crossed, Shape::inch_crossed, false,
     pattern("{width_hundredths}{cross}{rim}")},
    {Shape::inch_fraction, Shape::inch_fraction, true, pattern("{width_frac} {build}{rim}")},
    {Shape::inch_slash, Shape::inch_slash, true, pattern("{width_dec}/{second_in} {build}{rim}")},
    {Shape::us_letter, Shape::us_letter, true,
     pattern("{load_letter}{us_build?}{series}{build}{rim}")},
    {Shape::us_letter_crossed, Shape::us_letter_crossed, true,
     pattern("{load_letter}{us_build?}{series}{cross}{rim}")},
    {Shape::cycle_letter, Shape::cycle_letter, true,
     pattern("M{cycle_letter}{series} {build?}{rim}")},
    {Shape::outer_mm_crossed, Shape::outer_mm_crossed, false, pattern("{outer_mm}X{width_mm}")},
    {Shape::outer_in_crossed, Shape::outer_in_crossed, false, pattern("{outer_in}X{width_frac}")},
    {Shape::loose, Shape::metric, false,
     pattern("{prefix?}{width_mm}{gap}{series}{gap} {build?}{rim}")},
    {Shape::compact, Shape::metric, false, pattern("{prefix?}{width_3}{series_2} {build?}{rim}")},
};

constexpr bool in_order() {
  std::size_t i = 0;
  for (const ShapeRow& row : shapes) {
    if (row.shape != static_cast<Shape>(i++)) return false;
  }
  return i == static_cast<std::size_t>(Shape::count);
}
static_assert(in_order(), "one row for each shape, in the order of the enumeration");

// ---- what fits which family ---------------------------------------------------------------------

constexpr bool metric_shape(const Facts& f) {
  return f.shape == Shape::metric || f.shape == Shape::loose || f.shape == Shape::compact;
}
constexpr std::int32_t whole(int n) { return n * number_scale; }
constexpr bool half_rim(const Facts& f) { return f.rim % number_scale == number_scale / 2; }
constexpr bool marked_light(const Facts& f) {
  return f.commercial || f.camper || f.light_truck || f.prefix == 'L';
}
// Motor-cycle section widths of ISO 5751 end in 0, car widths of ISO 4000-1 in 5.
constexpr bool width_ends_in_0(const Facts& f) { return f.width % whole(10) == 0; }
// Greatest load index met on a motor-cycle tyre: common practice.
constexpr int most_of_a_cycle = 91;
// Greatest load index of a car's or a van's tyre, 1700 kg: common practice.
constexpr int most_of_a_van = 126;

// Width times height of the section times the way round its middle, in litres; 0 where the size
// does not give it. A size without series is taken as 82 per cent, one in inches as 95.
double ring_litres(const Facts& f) {
  double width = f.width_number();
  double share = 0.0;
  double rim = f.rim_code() * 25.4;
  switch (f.shape) {
    case Shape::metric:
    case Shape::loose:
    case Shape::compact:
      share = f.series / (100.0 * number_scale);
      break;
    case Shape::metric_rim_mm:
      share = f.series / (100.0 * number_scale);
      rim = f.rim_code();
      break;
    case Shape::no_series:
    case Shape::no_series_crossed:
      share = 0.82;
      break;
    case Shape::inch:
    case Shape::inch_crossed:
    case Shape::inch_fraction:
      share = 0.95;
      width *= 25.4;
      break;
    case Shape::flotation:
    case Shape::flotation_slash:
    case Shape::flotation_slashes:
      share = (f.second_number() - f.rim_code()) / (2.0 * width);
      width *= 25.4;
      break;
    default:
      return 0.0;
  }
  const double height = width * share;
  return 3.14159265 * (rim + height) * width * height / 1e6;
}

// The least ring of a truck's tyre on a whole rim is that of 255/100 R16, 135 litres, and the
// greatest of a car's or van's, 285/75 R16, 119: sizes and indices from memory.
constexpr double truck_litres = 130.0;
bool has_truck_volume(const Facts& f) { return ring_litres(f) >= truck_litres; }

// The most that any tyre carries for its ring is 40 kg a litre (205/65 R17.5 132J, 9 bar; from
// memory), with a margin.
constexpr double most_kilograms_a_litre = 45.0;

constexpr bool cross_ply(const Facts& f) {
  return f.construction == '-' || f.construction == 'D' || f.construction == 'X' ||
         f.construction == 0;
}

constexpr bool without_series(const Facts& f) {
  return f.shape == Shape::no_series || f.shape == Shape::no_series_crossed;
}

Fit fits_metric_car(const Facts& f) {
  if (!metric_shape(f) || is_farm_size(f)) return Fit::no;
  if (f.prefix == 'H') return Fit::sure;
  if (f.prefix != 0 || marked_light(f) || f.motorcycle) return Fit::no;
  if (f.says_car) return Fit::sure;
  if (f.rim < whole(8) || (half_rim(f) && f.rim > whole(17))) return Fit::no;
  if (f.width < whole(115) || f.width > whole(405)) return Fit::no;
  const bool cycle_size = width_ends_in_0(f) && f.width <= whole(330) &&
                          !(f.has_service() && f.service.load_index > most_of_a_cycle);
  return cycle_size ? Fit::possible : Fit::likely;
}

// Metric car and van tyres without a series, from 125-8 to 225 R16: common practice. Under that rim
// the 205/S5 of a slip would be a size; above that width 300-18 is 3.00-18, unless an R says
// metric.
constexpr std::int32_t least_rim_without_series = whole(8);
constexpr std::int32_t greatest_rim_without_series = whole(20);
constexpr std::int32_t widest_without_series = whole(245);
constexpr std::int32_t widest_radial_without_series = whole(345);
constexpr bool series_may_be_missing(const Facts& f) {
  const std::int32_t least =
      f.shape == Shape::no_series_crossed ? whole(10) : least_rim_without_series;
  const std::int32_t widest =
      f.construction == 'R' ? widest_radial_without_series : widest_without_series;
  return f.width >= whole(105) && f.width <= widest && f.rim >= least &&
         f.rim <= greatest_rim_without_series;
}

Fit fits_no_series(const Facts& f) {
  if (!without_series(f) || !series_may_be_missing(f)) return Fit::no;
  if (marked_light(f)) return Fit::no;
  return Fit::likely;
}

Fit fits_p_metric(const Facts& f) {
  return metric_shape(f) && f.prefix == 'P' ? Fit::sure : Fit::no;
}

Fit fits_lt_metric(const Facts& f) {
  if (!metric_shape(f)) return Fit::no;
  return f.prefix == 'L' || (f.light_truck && f.prefix == 0) ? Fit::sure : Fit::no;
}

Fit fits_flotation(const Facts& f) {
  const bool slashes = f.shape == Shape::flotation_slashes;
  if (f.shape != Shape::flotation && f.shape != Shape::flotation_slash && !slashes) return Fit::no;
  if (slashes && f.second < whole(32)) return Fit::no;  // 28/10/15 is a day
  if (f.prefix != 0 && f.prefix != 'L') return Fit::no;
  if (f.second <= f.width || f.second <= f.rim) return Fit::no;
  return f.light_truck || f.prefix == 'L' ? Fit::sure : Fit::likely;
}

Fit fits_commercial(const Facts& f) {
  if (!metric_shape(f) && !without_series(f)) return Fit::no;
  if (f.prefix != 0) return Fit::no;
  if (without_series(f) && !series_may_be_missing(f)) return Fit::no;
  if (f.light_truck) return without_series(f) ? Fit::sure : Fit::no;  // 155 R13 LT
  if (f.commercial || f.camper) return Fit::sure;
  if (!f.is_dual() || f.motorcycle || f.service.load_index > 121 || half_rim(f)) return Fit::no;
  return Fit::sure;
}

// 5.20 S 14 has its speed letter in the size; 18 SR14 (185R14) and 8.2S-20 (8.25-20) are slips.
constexpr bool slip_in_inches(const Facts& f) {
  if (f.size_symbol == 0) return false;
  return f.width_decimals == 0 || (f.width_decimals == 1 && f.construction == '-');
}

Fit fits_truck_inch(const Facts& f) {
  if (f.shape != Shape::inch || f.motorcycle || f.says_car) return Fit::no;
  if (slip_in_inches(f) || is_farm_size(f)) return Fit::no;
  const bool heavy = (f.ply >= 8 || f.load_range >= 'D') && f.rim >= whole(13);
  if (half_rim(f) || marked_light(f) || f.is_dual() || heavy || f.says_truck) return Fit::sure;
  if (f.width < whole(5)) return Fit::no;
  if (f.rim >= whole(20) && f.width >= whole(7)) return Fit::sure;
  if (f.rim >= whole(16) && f.width >= whole(7)) return Fit::likely;
  if (f.width_decimals == 0)
    return f.rim >= whole(14) && f.width >= whole(7) ? Fit::likely : Fit::no;
  if (f.width >= whole(12) && f.rim >= whole(15)) return Fit::likely;
  if (f.rim >= whole(16) && f.width >= whole(6)) return Fit::possible;
  return f.rim >= whole(15) && f.width >= whole(7) ? Fit::possible : Fit::no;
}

Fit fits_truck_metric(const Facts& f) {
  if (!metric_shape(f) || f.prefix != 0 || marked_light(f) || f.motorcycle || f.says_car) {
    return Fit::no;
  }
  if (half_rim(f) && f.rim > whole(17)) return Fit::sure;
  if (f.says_truck) return Fit::sure;
  if (f.has_service() && f.service.load_index > most_of_a_van && has_truck_volume(f)) {
    return Fit::sure;
  }
  if (f.is_dual() && f.service.load_index > 121) return Fit::sure;
  return Fit::no;
}

Fit fits_temporary_spare(const Facts& f) {
  return metric_shape(f) && f.prefix == 'T' ? Fit::sure : Fit::no;
}

Fit fits_special_trailer(const Facts& f) {
  return metric_shape(f) && f.prefix == 'S' ? Fit::sure : Fit::no;
}

Fit fits_inch_cross_ply(const Facts& f) {
  if (f.shape == Shape::inch_slash) {
    const Second second = second_of(f);
    return second == Second::series || second == Second::second_width ? Fit::likely : Fit::no;
  }
  if (f.shape != Shape::inch && f.shape != Shape::inch_crossed) return Fit::no;
  if (slip_in_inches(f) || is_farm_size(f)) return Fit::no;
  if (f.motorcycle || f.says_truck || marked_light(f) || half_rim(f)) return Fit::no;
  if (f.says_car || f.low_section) return Fit::sure;
  if (f.width_decimals == 0 && f.construction != 'R') return Fit::no;
  if (f.width >= whole(44) / 10) return f.width < whole(12) ? Fit::likely : Fit::no;
  return f.width >= whole(35) / 10 && f.rim >= whole(10) ? Fit::possible : Fit::no;
}

Fit fits_us_letter(const Facts& f) {
  if (f.shape != Shape::us_letter && f.shape != Shape::us_letter_crossed) return Fit::no;
  const std::int32_t s = f.series / number_scale;
  const bool known = s == 50 || s == 60 || s == 70 || s == 75 || s == 78 || s == 80 || s == 83;
  return known && f.rim >= whole(12) && f.rim <= whole(17) ? Fit::sure : Fit::no;
}

Fit fits_millimetre_rim(const Facts& f) {
  if (f.shape != Shape::metric_rim_mm && f.shape != Shape::no_series_rim_mm &&
      f.shape != Shape::crossed_rim_mm && f.shape != Shape::crossed_rim_cm) {
    return Fit::no;
  }
  return f.width >= whole(105) && f.width <= whole(305) ? Fit::sure : Fit::no;
}

Fit fits_overall_diameter(const Facts& f) {
  if (f.shape == Shape::inch_slash) {
    return second_of(f) == Second::outer_cm ? Fit::likely : Fit::no;
  }
  if (f.shape == Shape::outer_dashed) return f.second > f.rim ? Fit::sure : Fit::no;
  if (f.shape != Shape::outer_metric) return Fit::no;
  if (f.width > whole(405)) return Fit::no;  // 500/525-16 is 5.00/5.25-16
  // Such diameters end in 0 or 5 (common practice); 205/552R16 is 205/55 ZR16.
  if (f.second % whole(5) != 0) return Fit::no;
  return f.second_number() > f.rim_code() * 25.4 ? Fit::sure : Fit::no;
}

Fit fits_inch_overall_diameter(const Facts& f) {
  if (f.shape == Shape::inch_slash) {
    return second_of(f) == Second::outer_in ? Fit::sure : Fit::no;
  }
  // 23.0x9.5-15: a competition size spelled like a flotation one.
  if (f.shape != Shape::flotation && f.shape != Shape::flotation_slash) return Fit::no;
  if (f.light_truck || f.prefix != 0) return Fit::no;
  if (f.second <= f.width || f.second <= f.rim || f.rim < whole(10)) return Fit::no;
  if (f.competition) return Fit::sure;
  return f.second_decimals > 0 && f.rim >= whole(13) ? Fit::likely : Fit::no;
}

Fit fits_beaded_edge(const Facts& f) {
  if (f.shape == Shape::outer_mm_crossed) {
    return f.second >= whole(450) && f.width >= whole(60) && f.width <= whole(200) ? Fit::likely
                                                                                   : Fit::no;
  }
  if (f.shape != Shape::outer_in_crossed) return Fit::no;
  return f.second >= 3 * f.width ? Fit::likely : Fit::no;
}

Fit fits_motorcycle_metric(const Facts& f) {
  if (!metric_shape(f) || f.prefix != 0 || marked_light(f) || f.says_car || f.says_truck) {
    return Fit::no;
  }
  if (is_farm_size(f)) return Fit::no;
  if (f.width > whole(330)) return Fit::no;
  if (f.motorcycle) return Fit::sure;
  if (f.is_dual()) return Fit::no;
  if (f.has_service() && f.service.load_index > most_of_a_cycle) return Fit::no;
  if (f.width < whole(115)) return Fit::sure;
  if (f.rim < whole(8)) return Fit::possible;  // 145/70-6: any small vehicle
  // A motor-cycle width in a shape that cars share: more likely, not sure.
  if (width_ends_in_0(f)) return Fit::likely;
  if (f.has_service() && f.service.load_index >= 70) return Fit::no;
  return cross_ply(f) && f.width <= whole(195) ? Fit::possible : Fit::no;
}

Fit fits_motorcycle_inch(const Facts& f) {
  if (f.shape != Shape::inch && f.shape != Shape::inch_crossed && f.shape != Shape::inch_fraction) {
    return Fit::no;
  }
  if (f.says_car || f.says_truck || marked_light(f) || f.low_section || half_rim(f) || f.ply >= 8) {
    return Fit::no;
  }
  if (f.motorcycle) return Fit::sure;
  if (f.width_decimals == 0 || f.is_dual()) return Fit::no;
  const std::int32_t hundredths = f.width / (number_scale / 100);
  if (hundredths < 350) return Fit::sure;
  if (hundredths <= 425) return Fit::likely;
  if (f.rim < whole(16) || f.rim > whole(19)) return Fit::no;
  // 4.50-17, 4.60-18, 5.00-16, 5.10-17: old cars and motor cycles both.
  if (hundredths <= 460 || hundredths == 510) return Fit::likely;
  return hundredths == 500 && f.rim == whole(16) ? Fit::likely : Fit::no;
}

Fit fits_motorcycle_alpha(const Facts& f) {
  return f.shape == Shape::cycle_letter && f.series >= whole(60) ? Fit::sure : Fit::no;
}

// ---- the families -------------------------------------------------------------------------------

constexpr FamilyRow families[family_count] = {
    {Family::metric_car,
     Phrase("metric car tyre"),
     fits_metric_car,
     {"un-r30", "UN Regulation No. 30; ISO 4000-1", "2.17 size designation; 3.1", "2007",
      Standing::secondary}},
    {Family::metric_no_series,
     Phrase("metric car tyre without series"),
     fits_no_series,
     {"mot-4-1", "MOT inspection manual (GB)", "4.1, 80 and 82 per cent", "", Standing::secondary}},
    {Family::p_metric,
     Phrase("P-metric car tyre"),
     fits_p_metric,
     {"tra-p", "The Tire and Rim Association, Year Book; car makers' owner pages", "P-metric", "",
      Standing::secondary}},
    {Family::lt_metric,
     Phrase("light-truck metric tyre"),
     fits_lt_metric,
     {"tra-lt", "The Tire and Rim Association, Year Book; EU product register", "LT-metric", "",
      Standing::secondary}},
    {Family::flotation,
     Phrase("flotation tyre"),
     fits_flotation,
     {"un-r54-flotation", "UN Regulation No. 54, list of sizes as amended", "Annex 5", "",
      Standing::secondary}},
    {Family::commercial,
     Phrase("light commercial tyre"),
     fits_commercial,
     {"un-r54-c", "UN Regulation No. 54; EU product register", "2.17, C and CP", "",
      Standing::secondary}},
    {Family::truck_inch,
     Phrase("truck tyre in inches"),
     fits_truck_inch,
     {"un-r54-inch", "UN Regulation No. 54; EU product register", "2.17", "", Standing::secondary}},
    {Family::truck_metric,
     Phrase("metric truck tyre"),
     fits_truck_metric,
     {"un-r54-metric", "UN Regulation No. 54; EU product register", "2.17", "",
      Standing::secondary}},
    {Family::temporary_spare,
     Phrase("temporary-use spare tyre"),
     fits_temporary_spare,
     {"un-r64", "UN Regulation No. 64; car makers' owner pages", "T sizes", "",
      Standing::secondary}},
    {Family::special_trailer,
     Phrase("special trailer tyre"),
     fits_special_trailer,
     {"tra-st", "The Tire and Rim Association, Year Book", "ST", "", Standing::secondary}},
    {Family::inch_cross_ply,
     Phrase("inch-size tyre"),
     fits_inch_cross_ply,
     {"inch-handbooks", "Handbooks and club notes on older cars", "5.60-15, 5.20-13, 7.00-14", "",
      Standing::secondary}},
    {Family::us_alphanumeric,
     Phrase("US alphanumeric tyre"),
     fits_us_letter,
     {"us-alpha", "Owners' handbooks of 1968 to 1980", "load letter, series, rim", "",
      Standing::secondary}},
    {Family::millimetre_rim,
     Phrase("tyre for a rim in millimetres"),
     fits_millimetre_rim,
     {"mm-rim", "Handbooks and club notes on older cars", "165HR400; 190/65HR390", "",
      Standing::secondary}},
    {Family::overall_diameter,
     Phrase("competition tyre by overall diameter"),
     fits_overall_diameter,
     {"outer-mm", "Encyclopaedic notes on tyre codes", "number over 200 after the slash", "",
      Standing::secondary}},
    {Family::inch_overall_diameter,
     Phrase("competition tyre in inches by overall diameter"),
     fits_inch_overall_diameter,
     {"outer-in", "Competition practice", "9.2/20.0-13", "", Standing::memory}},
    {Family::beaded_edge,
     Phrase("tyre by overall diameter and section"),
     fits_beaded_edge,
     {"beaded-edge", "Trade glossary: beaded edge, overall sizes held by pressure", "", "",
      Standing::secondary}},
    {Family::motorcycle_metric,
     Phrase("metric motor-cycle tyre"),
     fits_motorcycle_metric,
     {"un-r75", "UN Regulation No. 75; ISO 5751", "2.16, M/C from rim code 16", "2010",
      Standing::secondary}},
    {Family::motorcycle_inch,
     Phrase("motor-cycle tyre in inches"),
     fits_motorcycle_inch,
     {"un-r75-inch", "UN Regulation No. 75; club notes", "3.00S18 4PR", "", Standing::secondary}},
    {Family::motorcycle_alpha,
     Phrase("alphanumeric motor-cycle tyre"),
     fits_motorcycle_alpha,
     {"mc-alpha", "Trade tables of motor-cycle size equivalents", "MT90B16", "",
      Standing::secondary}},
};

}  // namespace

const ShapeRow& shape_row(Shape shape) { return shapes[static_cast<std::size_t>(shape)]; }

const FamilyRow& family_row(std::size_t i) { return families[i]; }

// Common practice. In inches a farm tyre's width has one decimal (11.2-28, 13.6-28, 16.9-34) where
// a truck's on a whole rim has two or none; x.5 is shared up to rim 20 (10.5-20, 14.5-20). A metric
// one stands over a metre high on a whole rim of 24 and more, and its width ends in 0 (320/85 R24)
// or is over 400 mm.
bool is_farm_size(const Facts& f) {
  if (f.rim % whole(1) != 0) return false;
  if (f.shape == Shape::inch) {
    const std::int32_t tenths = f.width % whole(1);
    const bool shared = tenths == 0 || tenths == whole(1) / 2;
    return f.width_decimals == 1 && f.width >= whole(8) &&
           f.rim >= (shared ? whole(24) : whole(16));
  }
  if (!metric_shape(f) || f.prefix != 0 || marked_light(f) || f.rim < whole(24)) return false;
  if (!width_ends_in_0(f) && f.width <= whole(400)) return false;
  const double height = f.width_number() * f.series / whole(100);
  return f.rim_code() * 25.4 + 2.0 * height > 1000.0;
}

bool is_impossible_index(const Facts& f, Family family, int load_index) {
  if (load_index <= most_of_a_van) return false;
  const bool truck = family == Family::truck_inch || family == Family::truck_metric;
  if (truck && ((half_rim(f) && f.rim > whole(17)) ||
                (family == Family::truck_inch && f.rim >= whole(20)))) {
    return false;
  }
  const auto load = standard::load_of_index(load_index);
  const double litres = ring_litres(f);
  if (!load || litres <= 0.0) return true;
  if (in_kilograms(*load) > most_kilograms_a_litre * litres) return true;
  // American light trucks and trailers reach 132 on car rims.
  const bool heavy = truck || family == Family::lt_metric || family == Family::special_trailer ||
                     family == Family::flotation;
  return !heavy && litres < truck_litres;
}

// Trade tables of equivalents: MH 80, MJ 90, MM 100, MN 110, MR 120, MT 130, MU 140, MV 150; ML
// and MN from memory. MP is left out: its rows do not agree with its series.
int cycle_letter_width(char letter) {
  switch (letter) {
    case 'H':
      return 80;
    case 'J':
      return 90;
    case 'L':
      return 100;
    case 'M':
      return 100;
    case 'N':
      return 110;
    case 'R':
      return 120;
    case 'T':
      return 130;
    case 'U':
      return 140;
    case 'V':
      return 150;
    default:
      return 0;
  }
}

// Common practice: under the rim code it is a second width; a number that makes a believable
// sidewall above the rim (series 20 to 105) is the overall diameter; 48 to 75 after a whole width
// of 14 to 40 is a competition size in centimetres; else it is a series.
Second second_of(const Facts& f) {
  if (f.second <= f.rim) return Second::second_width;
  const double width = f.width_number();
  const double rim = f.rim_code();
  const double second = f.second_number();
  if (f.width_decimals == 0 && f.second_decimals == 0 && width >= 14.0 && second >= 48.0 &&
      second <= 75.0) {
    return Second::outer_cm;
  }
  const double height = (second - rim) / 2.0;
  if (height >= 0.2 * width && height <= 1.05 * width) return Second::outer_in;
  return Second::series;
}

}  // namespace treadwater::sidewall
