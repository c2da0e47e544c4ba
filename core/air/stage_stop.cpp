#include "core/air/stage_stop.hpp"

namespace treadwater::air {
namespace {

constexpr Source wheel_change{"stage-wheel-change", "A rally magazine on wheel changes on stages",
                              "93 to 97 s lost in all (Croatia 2023), just under 100 s at rest "
                              "(2025)",
                              "2023-2025", Standing::published};
constexpr Source drive_out{"stage-drive-out", "Reports of punctures driven out on tarmac stages",
                           "18.5 s in 2 km, 38.5 s in about 3 miles, nearly 90 s in half of 19.34 "
                           "km; 8 to 9.3 s a km worked out from them",
                           "2019-2022", Standing::published};
constexpr Source change_or_drive{"stage-change-or-drive",
                                 "A works team on punctures: change the wheel or drive on",
                                 "tarmac: no change with less than 7 or 8 km left; rough gravel: "
                                 "change even at 5 km",
                                 "", Standing::published};
constexpr Source triangle{"stage-triangle", "Motorsport UK National Competition Rules, chapter 13",
                          "7.11-7.19: triangle at least 100 m before the car, as fits the approach "
                          "speed; OK and SOS boards",
                          "2026", Standing::published};
constexpr Source four_wheels{
    "stage-four-wheels", "World rally regulations, article 34.1.5, in a press report",
    "no road section on fewer than four freely turning wheels", "2021", Standing::secondary};

}  // namespace

const Source& wheel_change_source() { return wheel_change; }
const Source& drive_out_source() { return drive_out; }
const Source& change_or_drive_source() { return change_or_drive; }
const Source& stage_triangle_source() { return triangle; }
const Source& four_wheels_source() { return four_wheels; }

}  // namespace treadwater::air
