// What the text on a sidewall says, in a line.
#include "tests/register/register.hpp"
#include "tests/support/sidewall_print.hpp"

namespace treadwater::checks {
namespace {

constexpr Check checks[] = {
    {"reading of a sidewall",
     [](Asked& in) { return in.answer(std::string_view(testing::summary(in.text("text")))); }},
};

}  // namespace

Checks sidewall_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
