#include "core/patch/rating.hpp"

#include "core/standard/load_index.hpp"

namespace treadwater::patch {

using sidewall::Family;

std::optional<Laws> laws_of(const sidewall::Reading& tyre) {
  const bool extra = tyre.extra_load || tyre.high_load;
  switch (tyre.family) {
    case Family::temporary_spare:
      return Laws{temporary_spare_law(), {}};
    case Family::p_metric: {
      const LoadLaw law = extra ? p_metric_extra_load() : p_metric_standard_load();
      LoadLaw european = european_standard_load();
      european.reference = law.reference;
      return Laws{law, european};
    }
    case Family::metric_car:
    case Family::metric_no_series:
    case Family::millimetre_rim:
      return Laws{extra ? european_extra_load() : european_standard_load(), {}};
    default:
      break;
  }
  if (!tyre.marked_pressure) return std::nullopt;
  const bool own_law_unknown = tyre.family == Family::lt_metric ||
                               tyre.family == Family::flotation ||
                               tyre.family == Family::special_trailer;
  return Laws{own_law_unknown ? linear_at_marked_pressure(*tyre.marked_pressure)
                              : european_at_marked_pressure(*tyre.marked_pressure),
              {}};
}

std::optional<GreatestLoad> greatest_load(const sidewall::Reading& tyre) {
  if (tyre.service) {
    const auto mass = standard::load_of_index(tyre.service->load_index);
    if (!mass) return std::nullopt;
    return GreatestLoad{*mass, tyre.service->load_index, false};
  }
  const bool in_range = tyre.section_width && tyre.rim_diameter && tyre.aspect_percent &&
                        *tyre.aspect_percent >= 50.0 && *tyre.aspect_percent <= 80.0;
  if (tyre.family != Family::p_metric || tyre.extra_load || !in_range) return std::nullopt;
  const int index = standard::nearest_load_index(
      p_metric_capacity(*tyre.section_width, *tyre.aspect_percent, *tyre.rim_diameter,
                        p_metric_standard_load().reference));
  return GreatestLoad{*standard::load_of_index(index), index, true};
}

std::optional<standard::SpeedSymbol> speed_symbol(const sidewall::Reading& tyre) {
  return tyre.service ? std::optional(tyre.service->symbol) : tyre.size_symbol;
}

}  // namespace treadwater::patch
