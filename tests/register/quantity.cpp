// Exact factors between units.
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

constexpr Check checks[] = {
    {"pressure", [](Asked& in) { return in.answer(in.of<GaugePressure>("pressure")); }},
    {"force", [](Asked& in) { return in.answer(in.of<Force>("force")); }},
    {"length", [](Asked& in) { return in.answer(in.of<Length>("length")); }},
    {"speed", [](Asked& in) { return in.answer(in.of<Speed>("speed")); }},
    {"mass", [](Asked& in) { return in.answer(in.of<Mass>("mass")); }},
    {"temperature", [](Asked& in) { return in.answer(in.of<Temperature>("temperature")); }},
};

}  // namespace

Checks quantity_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
