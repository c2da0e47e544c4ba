#include "core/sheets/car_check/reading.hpp"

#include <algorithm>

#include "core/judge/car_load.hpp"
#include "core/quantity/text.hpp"
#include "core/sheets/car_check/fields.hpp"

namespace treadwater::sheets::car_check {
namespace {

using judge::all_wheels;
using judge::Corner;
using judge::spare_wheel;

void read_corner(const FormReader::Row& row, Corner& corner) {
  corner.given = true;
  corner.tyre.size = row.read(size);
  corner.tyre.gauge = row.read(pressure);
  corner.centre = row.read(tread);
  corner.inner = row.read(tread_inner);
  corner.outer = row.read(tread_outer);
  corner.load = row.read(load);
  auto& least = corner.tyre.tread;
  for (const auto& depth : {corner.centre, corner.inner, corner.outer})
    if (depth) least = least ? std::min(*least, *depth) : *depth;
}

void read_corners(FormReader& form, judge::Car& car) {
  const std::size_t count = form.rows(corners);
  std::string missing;
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    const FormReader::Row row = form.row(corners, wheel);
    const Phrase name = judge::wheel_name(wheel);
    Corner& corner = car.corners[wheel];
    if (wheel < count && (row.given(size) || row.given(pressure) || row.given(tread)))
      read_corner(row, corner);
    else if (wheel != spare_wheel)
      add_item(missing, say(name));
    if (corner.given && !corner.tyre.tread && wheel != spare_wheel && form.ok())
      row.problem(tread, "missing",
                  say("#: the tread depth is missing. Something like 5 mm would do.", {name}));
  }
  if (!missing.empty())
    form.problem(corners, "missing", say("Still to be filled in: #.", {missing}));
}

judge::CarLoads read_loads(FormReader& form) {
  judge::CarLoads loads;
  loads.front_axle = form.read(front_axle);
  loads.rear_axle = form.read(rear_axle);
  const auto empty = form.read(kerb);
  car::CarLoad masses;
  masses.front_share = form.read(front_share).value_or(55.0) / 100.0;
  masses.front_people = static_cast<int>(form.read(front_people).value_or(1.0));
  masses.rear_people = static_cast<int>(form.read(rear_people).value_or(0.0));
  masses.boot = form.read(boot).value_or(Mass());
  masses.roof = form.read(roof).value_or(Mass());
  masses.tow_ball = form.read(tow_ball).value_or(Mass());
  if (empty) {
    masses.kerb = *empty;
    loads.masses = masses;
  }
  return loads;
}

// A missing load is reported once.
void ask_for_loads(FormReader& form, const judge::Car& car) {
  for (const judge::Axle& axle : judge::axles)
    for (const std::size_t wheel : {axle.left, axle.right})
      if (car.corners[wheel].given && !car.corners[wheel].load && form.ok())
        form.problem(axle.left == 0 ? front_axle : rear_axle, "missing",
                     say("Load on the # axle is missing: from a weighbridge, or from the kerb mass "
                         "below. Something like 800 kg would do.",
                         {axle.name}));
}

// Shared by all corners.
struct Shared {
  judge::TyreCase tyre{};
  bool water_reads = false;
  bool rest_reads = false;
};

Shared read_shared(FormReader& form) {
  Shared shared;
  const std::size_t before = form.problems().size();
  shared.tyre.water = form.road_water(water);
  const std::size_t after_water = form.problems().size();
  shared.tyre.intended = form.read(speed);
  shared.tyre.kind = form.read(fields::tyre_kind).value_or(nullptr);
  shared.tyre.surface = form.read(fields::surface).value_or(nullptr);
  shared.tyre.law = form.read(fields::place).value_or(nullptr);
  shared.tyre.today = form.today();
  shared.water_reads = before == after_water;
  shared.rest_reads = form.problems().size() == after_water && form.knows_units_and_day();
  return shared;
}

// The rest of a corner's case. The spare is not checked in water.
void complete(std::size_t wheel, FormReader& form, const Shared& shared, Corner& corner) {
  const FormReader::Row row = form.row(corners, wheel);
  const std::size_t before = form.problems().size();
  judge::TyreCase tyre = shared.tyre;
  tyre.size = std::move(corner.tyre.size);
  tyre.gauge = corner.tyre.gauge;
  tyre.tread = corner.tyre.tread;
  tyre.middle_tread = corner.centre;
  if (row.takes(judged_load, *corner.load)) tyre.load = corner.load;
  tyre.hot = row.read(pressure_state);
  tyre.age = row.tyre_age(date_code, tyre.size);
  if (wheel == spare_wheel) tyre.water.reset();
  corner.tyre = std::move(tyre);
  corner.whole = form.problems().size() == before && shared.rest_reads &&
                 (shared.water_reads || wheel == spare_wheel);
}

void complete_corners(FormReader& form, judge::Car& car) {
  if (std::none_of(car.corners.begin(), car.corners.end(),
                   [](const Corner& corner) { return corner.may_be_judged(); }))
    return;
  const Shared shared = read_shared(form);
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel)
    if (car.corners[wheel].may_be_judged()) complete(wheel, form, shared, car.corners[wheel]);
}

}  // namespace

judge::Car read_car(FormReader& form, judge::Findings& findings) {
  judge::Car car;
  read_corners(form, car);
  judge::judge_wear(car, findings);
  const Corner& spare = car.spare();
  if (!spare.given) findings.add(judge::finding::no_spare);
  judge::settle_loads(read_loads(form), car, findings);
  ask_for_loads(form, car);
  complete_corners(form, car);
  if (spare.given && !spare.may_be_judged() && form.ok())
    findings.add(spare.tyre.tread ? judge::finding::spare_load_unknown
                                  : judge::finding::spare_tread_unknown);
  car.top_speed = form.read(top_speed);
  return car;
}

}  // namespace treadwater::sheets::car_check
