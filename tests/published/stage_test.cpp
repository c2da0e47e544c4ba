// Worked examples of choosing under uncertainty from textbooks and teaching sheets, to the printed
// digit. Payoffs are negative losses.
#include "core/stage/decision.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::stage;
using namespace treadwater::testing;

namespace {

LossTable payoffs(std::vector<double> chance, std::vector<double> payoff) {
  for (double& p : payoff) p = -p;
  return {chance.size(), std::move(chance), std::move(payoff)};
}

std::vector<double> largest_regrets(const LossTable& table) {
  std::vector<double> regrets;
  for (std::size_t a = 0; a * table.states < table.loss.size(); ++a)
    regrets.push_back(judge(table, a, 0.0).largest_regret);
  return regrets;
}

double tail_mean(std::vector<double> chance, std::vector<double> loss, double level) {
  return judge({chance.size(), chance, std::move(loss)}, 0, level).tail_mean;
}

}  // namespace

// Published (online.flipbuilder.com/bmcx/zrzf, p. 188): demand 40, 50, 60, 70 with chances .1 .2 .4
// .3, bought at $8, sold at $10. Printed: 50 is best at $90, 70 gives $30; the largest regrets are
// 60, 80, 160, 240. The two expected values not printed, 80 and 80, are worked out here.
TEST_CASE("the salad stand: expected values 80, 90, 80, 30 and regrets 60, 80, 160, 240") {
  std::vector<double> payoff;
  for (const double bought : {40.0, 50.0, 60.0, 70.0})
    for (const double asked : {40.0, 50.0, 60.0, 70.0})
      payoff.push_back(10.0 * std::min(bought, asked) - 8.0 * bought);
  const LossTable table = payoffs({0.1, 0.2, 0.4, 0.3}, payoff);
  CHECK(largest_regrets(table) == std::vector<double>{60.0, 80.0, 160.0, 240.0});
  const double expected[] = {80.0, 90.0, 80.0, 30.0};
  for (std::size_t a = 0; a < 4; ++a)
    CHECK_THAT(-judge(table, a, 0.0).expected, WithinAbs(expected[a], 1e-9));
}

// Published (scribd.com/document/96541300).
TEST_CASE("building lots: the largest regrets are 45, 25 and 6") {
  const LossTable table =
      payoffs({0.3, 0.3, 0.4}, {12.0, 15.0, 15.0, 9.0, 25.0, 35.0, 6.0, 35.0, 60.0});
  CHECK(largest_regrets(table) == std::vector<double>{45.0, 25.0, 6.0});
}

// The same sheet. Its copy has lost the minus signs; with these the printed regrets come out.
TEST_CASE("four decisions: the largest regrets are 150, 160, 180 and 100") {
  const LossTable table = payoffs({0.3, 0.3, 0.4}, {30.0, 80.0, -30.0, 100.0, 30.0, -40.0, -80.0,
                                                    -10.0, 120.0, 20.0, 20.0, 20.0});
  CHECK(largest_regrets(table) == std::vector<double>{150.0, 160.0, 180.0, 100.0});
}

// Published: Anderson et al., An Introduction to Management Science, eq. 13.1, strong demand only.
TEST_CASE("the condominium example: with strong demand small regrets 12 and medium 6") {
  const LossTable table = payoffs({1.0}, {8.0, 14.0, 20.0});
  CHECK(largest_regrets(table) == std::vector<double>{12.0, 6.0, 0.0});
}

// Worked out by hand from the definition.
TEST_CASE("the mean of the worst tail: 40, 35, 5.8 and 10") {
  const std::vector<double> fifths(5, 0.2);
  const std::vector<double> steps{0.0, 10.0, 20.0, 30.0, 40.0};
  CHECK_THAT(tail_mean(fifths, steps, 0.8), WithinAbs(40.0, 1e-9));
  CHECK_THAT(tail_mean(fifths, steps, 0.6), WithinAbs(35.0, 1e-9));
  const std::vector<double> chance{0.4, 0.3, 0.2, 0.1};
  const std::vector<double> loss{1.0, 2.0, 3.0, 10.0};
  CHECK_THAT(tail_mean(chance, loss, 0.75), WithinAbs(5.8, 1e-9));
  CHECK_THAT(tail_mean(chance, loss, 0.9), WithinAbs(10.0, 1e-9));
  CHECK_THAT(tail_mean(chance, loss, 0.0), WithinAbs(2.6, 1e-9));  // the plain mean
}
