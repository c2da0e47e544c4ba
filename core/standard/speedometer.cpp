#include "core/standard/speedometer.hpp"

namespace treadwater::standard {
namespace {

constexpr Source source{"speedometer", "UN R39, speedometer accuracy",
                        "5.3, 0 <= V1 - V2 <= 0.1 V2 + 4 km/h, as quoted with examples", "",
                        Standing::secondary};

}  // namespace

const Source& speedometer_source() { return source; }

}  // namespace treadwater::standard
