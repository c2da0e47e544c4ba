// Reading the canonical text of a reading gives the same reading: random tyres of every family,
// spelled as a person might.
#include <cctype>
#include <string>
#include <vector>

#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

using Family = sidewall::Family;

int between(int low, int high) { return *rc::gen::inRange(low, high + 1); }

template <class T>
T one_of(std::vector<T> list) {
  return list[static_cast<std::size_t>(between(0, static_cast<int>(list.size()) - 1))];
}

std::string pick(std::vector<const char*> list) { return one_of(std::move(list)); }

std::string number(int n) { return std::to_string(n); }

// 550 -> 5.50
std::string hundredths(int n) {
  const std::string rest = number(n % 100);
  return number(n / 100) + "." + (rest.size() < 2 ? "0" : "") + rest;
}

std::string gap() { return pick({"", "", " ", "  ", "\t", "\xC2\xA0", "\xE2\x80\xAF"}); }

std::string space() { return pick({" ", " ", "  ", ", ", "\n"}); }

// A size of the family in its own spelling, with random gaps.
std::string size_of(Family family) {
  const auto slash = [] { return gap() + "/" + gap(); };
  const auto series = [] { return number(5 * between(5, 17)); };
  const auto car_width = [] { return number(10 * between(13, 34) + 5); };
  const std::string r = gap() + "R" + gap();
  switch (family) {
    case Family::metric_car:
      return pick({"", "", "", "HL"}) + car_width() + slash() + series() + gap() +
             pick({"R", "ZR", "RF", "ZRF", "HR", "SR", "VR", "D", "-", "B"}) + gap() +
             number(between(12, 24));
    case Family::metric_no_series:
      return number(10 * between(12, 20) + 5) + gap() + pick({"R", "SR", "HR", "VR", "-"}) + gap() +
             number(between(10, 16));
    case Family::p_metric:
      return "P" + gap() + car_width() + slash() + series() + gap() + pick({"R", "D", "B"}) +
             number(between(13, 22));
    case Family::lt_metric: {
      const bool front = between(0, 1) == 1;
      const std::string size = car_width() + slash() + series() + r + number(between(14, 22));
      return front ? "LT" + gap() + size : size + gap() + "LT";
    }
    case Family::flotation:
      return number(between(27, 44)) + gap() + "x" + gap() +
             pick({"9.50", "10.5", "10.50", "11.50", "12,50", "13.50"}) + r +
             number(between(14, 24)) + gap() + "LT";
    case Family::commercial:
      return number(10 * between(14, 28) + 5) + (between(0, 1) == 1 ? slash() + series() : "") + r +
             number(between(12, 18)) + gap() + pick({"C", "CP"});
    case Family::truck_inch:
      return pick({"7.50", "8.25", "9.00", "10.00", "11.00", "12.00"}) + gap() + pick({"R", "-"}) +
             gap() + pick({"20", "22", "24"});
    case Family::truck_metric:
      return number(10 * between(20, 49) + 5) + slash() + number(5 * between(9, 18)) + r +
             pick({"17.5", "19.5", "22.5", "24,5"});
    case Family::temporary_spare:
      return "T" + gap() + car_width() + slash() + series() + gap() + pick({"D", "R", "B"}) +
             number(between(13, 21));
    case Family::special_trailer:
      return "ST" + gap() + car_width() + slash() + series() + gap() + pick({"D", "R"}) +
             number(between(12, 17));
    case Family::inch_cross_ply:
      return hundredths(10 * between(52, 69)) + pick({"", "", "L"}) + gap() +
             pick({"-", "S", "H", "V"}) + gap() + number(between(10, 15));
    case Family::us_alphanumeric:
      return pick({"A", "B", "C", "E", "F", "G", "H", "J", "L"}) + pick({"", "R"}) +
             pick({"60", "70", "78"}) + gap() + pick({"-", "-", "VR", "HR"}) + gap() +
             number(between(13, 15));
    case Family::millimetre_rim:
      return number(5 * between(25, 48)) + (between(0, 1) == 1 ? slash() + series() : "") + gap() +
             pick({"R", "HR", "VR", "SR"}) + gap() + pick({"365", "390", "400", "415"});
    case Family::overall_diameter:
      return number(5 * between(32, 70)) + slash() + number(10 * between(53, 72)) + gap() +
             pick({"R", "-"}) + gap() + number(between(13, 18));
    case Family::inch_overall_diameter:
      return pick({"7.2", "8.2", "9.2", "10.0"}) + slash() + pick({"20.0", "21.5", "22.0"}) +
             gap() + "-" + gap() + number(between(13, 15));
    case Family::beaded_edge:
      if (between(0, 1) == 1) {
        return number(5 * between(130, 190)) + gap() + "x" + gap() + number(5 * between(13, 27));
      }
      return number(between(24, 37)) + gap() + "x" + gap() + number(between(2, 5)) +
             pick({"", " 1/2", "\xC2\xBD", " 1/4", " 5/8", ".5"});
    case Family::motorcycle_metric:
      return number(10 * between(7, 20)) + slash() + number(5 * between(8, 20)) + gap() +
             pick({"R", "ZR", "-", "B", "-V", "-H"}) + gap() + number(between(10, 21)) +
             pick({"", " M/C", "M/C"});
    case Family::motorcycle_inch:
      return hundredths(25 * between(8, 13)) + gap() + pick({"-", "S", "H", "x"}) + gap() +
             number(between(16, 21));
    case Family::motorcycle_alpha:
      return "M" + pick({"H", "J", "L", "M", "N", "P", "R", "T", "U", "V"}) + pick({"85", "90"}) +
             gap() + pick({"B", "R", "-"}) + gap() + number(between(15, 21));
  }
  return {};
}

bool may_be_above(Family family) {
  return family == Family::metric_car || family == Family::motorcycle_metric;
}

// `91V`, now and then with twins or in brackets. Indices that leave the family as it is.
std::string service_of(Family family) {
  const std::string symbol =
      pick({"J", "L", "M", "N", "P", "Q", "R", "S", "T", "U", "H", "V", "W", "Y"});
  switch (family) {
    case Family::commercial:
    case Family::lt_metric: {
      const int index = between(90, 121);
      return number(index) + pick({"/", "-"}) + number(index - 2) + gap() + symbol;
    }
    case Family::truck_inch:
    case Family::truck_metric: {
      const int index = between(128, 164);
      const std::string first = number(index) + "/" + number(index - 4) + gap() + symbol;
      return between(0, 2) > 0 ? first
                               : first + " (" + number(index - 2) + "/" + number(index - 6) + "M)";
    }
    case Family::motorcycle_metric:
    case Family::motorcycle_inch:
    case Family::motorcycle_alpha: {
      const std::string plain = number(between(41, 82)) + gap() + symbol;
      return may_be_above(family) && between(0, 3) == 0 ? "(" + plain + ")" : plain;
    }
    case Family::inch_overall_diameter:
    case Family::overall_diameter:
    case Family::beaded_edge:
      return {};
    default: {
      const std::string plain = number(between(70, 112)) + gap() + symbol;
      return may_be_above(family) && between(0, 3) == 0 ? "(" + plain + ")" : plain;
    }
  }
}

std::string marks() {
  std::string out;
  for (int n = between(0, 4); n > 0; --n) {
    out += space() + pick({"XL",
                           "EXTRA LOAD",
                           "Reinforced",
                           "TL",
                           "tubeless",
                           "TT",
                           "M+S",
                           "3PMSF",
                           "outside",
                           "ROTATION",
                           "6PR",
                           "475 kPa",
                           "at 69 PSI",
                           "MAX LOAD 615 kg",
                           "TREADWEAR 400",
                           "traction AA",
                           "TEMPERATURE A",
                           "E4 0212345",
                           "e11 00234",
                           "S2WR2",
                           "NHS",
                           "retread",
                           "DOT 4B9K 1XXX 2319",
                           "DOT EJ3J FEH 324",
                           "1521",
                           "STUDDED",
                           "run flat",
                           "steel belted",
                           "UTQG 300 A B",
                           "TWI",
                           "purple"});
  }
  return out;
}

std::string random_case(std::string text) {
  if (between(0, 2) != 0) return text;
  for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

constexpr Family families[] = {
    Family::metric_car,       Family::metric_no_series,  Family::p_metric,
    Family::lt_metric,        Family::flotation,         Family::commercial,
    Family::truck_inch,       Family::truck_metric,      Family::temporary_spare,
    Family::special_trailer,  Family::inch_cross_ply,    Family::us_alphanumeric,
    Family::millimetre_rim,   Family::overall_diameter,  Family::inch_overall_diameter,
    Family::beaded_edge,      Family::motorcycle_metric, Family::motorcycle_inch,
    Family::motorcycle_alpha,
};

}  // namespace

TEST_CASE("reading the canonical text of a reading gives the same reading") {
  for (const Family family : families) {
    const std::string name(sidewall::family_name(family).english());
    CHECK(holds(
        "a " + name + " reads back from its canonical text",
        [family, &name] {
          const std::string size = size_of(family);
          const std::string service =
              between(0, 2) > 0 ? space() + service_of(family) : std::string();
          const std::string text = random_case(size + service + marks());
          const auto first = sidewall::read(text);
          if (!first) RC_FAIL("does not read: " + text + ": " + first.error().text);
          if (first->family != family) {
            RC_FAIL("not a " + name + ": " + text + ": " +
                    std::string(sidewall::family_name(first->family).english()));
          }
          const auto second = sidewall::read(first->canonical);
          if (!second) RC_FAIL("does not read back: " + text + ": " + first->canonical);
          RC_ASSERT(what_it_is(*second) == what_it_is(*first));
          const auto third = sidewall::read(second->canonical);
          RC_ASSERT(bool(third));
          RC_ASSERT(everything(*third) == everything(*second));
        },
        3000));
  }
}

TEST_CASE("a size reads the same after its service description as before it") {
  CHECK(holds(
      "order does not matter",
      [] {
        const Family family = one_of(std::vector<Family>(std::begin(families), std::end(families)));
        if (family == Family::lt_metric) return;  // there a letter after the size is a load range
        const std::string size = size_of(family);
        const std::string service = service_of(family);
        // Apart, the P of 90/88 P 145/80 R12 could as well belong to the size.
        for (const char c : service) {
          if (c == '(' || c == ' ' || c == '\t' || static_cast<unsigned char>(c) > 0x7F) return;
        }
        if (service.empty()) return;
        // And 105R 27x6 R14 LT begins like the size 105 R27: R, B and D are structures too.
        if (std::string_view("RBD").find(service.back()) != std::string_view::npos) return;
        const auto after = sidewall::read(size + " " + service);
        const auto before = sidewall::read(service + " " + size);
        RC_ASSERT(bool(after));
        if (!before) RC_FAIL("does not read: " + service + " " + size + ": " + before.error().text);
        RC_LOG() << size << " " << service << "\n"
                 << what_it_is(*after) << "\n"
                 << what_it_is(*before) << "\n";
        RC_ASSERT(what_it_is(*before) == what_it_is(*after));
      },
      20000));
}
