#include "core/air/get_home.hpp"

#include <algorithm>

namespace treadwater::air {
namespace {

constexpr Source self_supporting{"run-flat", "UN R64, definition of a run-flat tyre",
                                 "80 km at 80 km/h without air, as quoted; handbooks agree", "2017",
                                 Standing::secondary};
constexpr Source run_flat_load{"run-flat-load", "UN R30, run-flat test at 65 % of the load rating",
                               "not seen in print; less distance above that load is ours", "",
                               Standing::memory};
constexpr Source lubricated{
    "run-flat-lubricated", "Early run-flat tyres with a lubricant, about 100 miles at 50 mph",
    "vapour keeps 4 to 5 psi; no source; half the distance kept", "", Standing::common_practice};
constexpr Source spare{"temporary-spare", "Car handbooks and makers' notes on temporary spares",
                       "80 km/h, 420 kPa, one at a time", "", Standing::secondary};
constexpr Source kit{"sealant-kit", "Motoring pages on sealant kits",
                     "45 to 50 mph, 50 to 125 miles, holes to 6 mm in the tread", "",
                     Standing::secondary};
constexpr Source flat{"plain-flat", "Driving on a flat tyre destroys it and may lose the car",
                      "stop now", "", Standing::common_practice};

constexpr double proved_load_share = 0.65;

// In the order of Way.
constexpr GetHome ways[] = {
    {"self_supporting", kilometres_per_hour(80.0), kilometres(80.0), miles(150.0), std::nullopt, 1,
     Phrase(
         "Only with a working pressure warning: this tyre hides that it is flat. Drive gently to a "
         "fitter."),
     &self_supporting},
    {"lubricated", kilometres_per_hour(80.0), kilometres(80.0), miles(100.0), psi(4.0), 1,
     Phrase("Its vapour keeps up 4 to 5 psi, and its lubricant is as old as the tyre. Drive "
            "gently, and "
            "no further than you must."),
     &lubricated},
    {"temporary_spare", kilometres_per_hour(80.0), std::nullopt, std::nullopt, kilopascals(420.0),
     1,
     Phrase("One only, at the pressure on its sidewall, no snow chains on it in front. Drive to a "
            "fitter."),
     &spare},
    {"sealant_kit", miles_per_hour(45.0), kilometres(80.0), miles(125.0), std::nullopt, 1,
     Phrase("For a hole in the tread of no more than 6 mm. The label of the kit comes first."),
     &kit},
    {"plain_flat", kilometres_per_hour(0.0), metres(0.0), std::nullopt, std::nullopt, 0,
     Phrase("Stop now, where it is safe. Change the wheel or wait for help."), &flat},
};

}  // namespace

GetHome get_home(Way way, double share_of_rated_load) {
  GetHome home = ways[static_cast<int>(way)];
  if (!(share_of_rated_load <= 1.0)) {
    home.distance = metres(0.0);
    home.speed = kilometres_per_hour(0.0);
  } else if (way == Way::self_supporting) {
    home.distance =
        *home.distance * (proved_load_share / std::max(proved_load_share, share_of_rated_load));
  }
  return home;
}

const Source& run_flat_load_source() { return run_flat_load; }

}  // namespace treadwater::air
