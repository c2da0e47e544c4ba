#include "core/words/say.hpp"

#include "core/words/catalogue.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

// A language of a few words, for as long as a test speaks it.
void teach() {
  learn("zz", {{"", "n > 1"},
               {"0.5", "0,5"},
               {"“#”", "«\u00A0#\u00A0»"},
               {"Spare", "Zpare"},
               {"# on #.", "#2: #1."},
               {"# stage", "# ztage"},
               {"# stages", "# ztages"},
               {"of a road\x04"
                "wet",
                "zwet"},
               {"# or #", "# zor #"}});
}

}  // namespace

TEST_CASE("a phrase is said in the language spoken; what somebody typed never is") {
  teach();
  CHECK(say(Phrase("Spare")) == "Spare");
  const Speaking zz("zz");
  CHECK(say(Phrase("Spare")) == "Zpare");
  CHECK(Text(Typed("Spare")).str() == "Spare");
  CHECK(say("# on #.", {Typed("Spare"), Phrase("Spare")}) == "Zpare: Spare.");
}

TEST_CASE("gaps are filled in the order of the language, and one too many takes nothing") {
  CHECK(say("# on #.", {std::string("a"), std::string("b")}) == "a on b.");
  CHECK(say("# on #.", {std::string("a")}) == "a on .");
  teach();
  const Speaking zz("zz");
  CHECK(say("# on #.", {std::string("a"), std::string("b")}) == "b: a.");
}

TEST_CASE("each language has its own rule for when a plural is due") {
  const auto stages = [](double n) {
    return plural("# stage", "# stages", n, {std::to_string(static_cast<int>(n))});
  };
  CHECK(stages(1) == "1 stage");
  CHECK(stages(0) == "0 stages");
  CHECK(stages(2) == "2 stages");
  teach();
  const Speaking zz("zz");
  CHECK(stages(0) == "0 ztage");
  CHECK(stages(1) == "1 ztage");
  CHECK(stages(2) == "2 ztages");
}

TEST_CASE("a context parts two meanings of one English text, and is never seen") {
  const Phrase wet(
      "of a road\x04"
      "wet");
  CHECK(wet.english() == "wet");
  CHECK(say(wet) == "wet");
  teach();
  const Speaking zz("zz");
  CHECK(say(wet) == "zwet");
  CHECK(say(Phrase("wet")) == "wet");
}

TEST_CASE("what somebody typed is fit to be repeated, whole characters of it") {
  CHECK(Typed(" a\t b\n").text() == "a b");
  CHECK(Typed("\xFF").text() == "\uFFFD");
  const std::string forty(40, 'x');
  CHECK(Typed(forty).text() == forty);
  CHECK(Typed(forty + "y").text() == forty + "…");
  std::string accents;
  for (int i = 0; i < 41; ++i) accents += "é";
  CHECK(Typed(accents).text().size() == 80 + std::string_view("…").size());
}

TEST_CASE("quotation marks and the decimal sign are those of the language") {
  teach();
  const Speaking zz("zz");
  CHECK(in_quotes("7") == "«\u00A07\u00A0»");
  CHECK(quantity_in_words("2.5 bar") == "2,5 bar");
  CHECK(alternatives({"a", "b", "c"}) == "a, b zor c");
}

TEST_CASE("whole sentences follow each other, and empty ones are passed over") {
  CHECK(sentences({"One.", "", "Two."}) == "One. Two.");
  CHECK(at_head("cut slick") == "Cut slick");
  CHECK(within_sentence("Load at this pressure") == "load at this pressure");
}

TEST_CASE("what no catalogue knows is said in English, and so is an unknown language") {
  teach();
  {
    const Speaking zz("zz");
    CHECK(say(Phrase("No such phrase")) == "No such phrase");
    const Speaking inner("tlh");
    CHECK(say(Phrase("Spare")) == "Spare");
  }
  CHECK(say(Phrase("Spare")) == "Spare");
}
