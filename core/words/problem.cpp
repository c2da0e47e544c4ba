#include "core/words/problem.hpp"

#include "core/quantity/write.hpp"
#include "core/words/say.hpp"

namespace treadwater {
namespace {

struct DimensionWords {
  Phrase noun;
  Phrase units;  // to suggest
};

DimensionWords words_of(Dimension d) {
  switch (d) {
    case Dimension::pressure:
      return {Phrase("a pressure"), Phrase("kPa, bar or psi")};
    case Dimension::mass:
      return {Phrase("a mass"), Phrase("kg or lb")};
    case Dimension::length:
      return {Phrase("a length"), Phrase("mm or in")};
    case Dimension::speed:
      return {Phrase("a speed"), Phrase("km/h or mph")};
    case Dimension::temperature:
      return {Phrase("a temperature"), Phrase("# or #")};
    case Dimension::force:
      return {Phrase("a force"), Phrase("N")};
    case Dimension::rain:
      return {Phrase("a rate of rain"), Phrase("mm/h or in/h")};
    case Dimension::time:
      return {Phrase("a time"), Phrase("s, min or h")};
    case Dimension::number:
      return {Phrase("a number"), Phrase("no unit")};
  }
  return {Phrase("a quantity"), Phrase("its unit")};
}

std::string units_of(Dimension d) {
  constexpr std::string_view celsius = "°C", fahrenheit = "°F";
  return say(words_of(d).units, {celsius, fahrenheit});
}

// The gaps are the label, what was written, and then the example or the code's extra detail.
struct Sentence {
  std::string_view code;
  Phrase phrase;
};
constexpr Sentence sentences_of_codes[] = {
    {"too_long", Phrase("#: # is # characters long. One number and its unit would do, such as #.")},
    {"no_number",
     Phrase("#: # has no number that can be read. A number and its unit would do, such "
            "as #.")},
    {"bad_fraction", Phrase("#: # divides by nothing.")},
    {"two_numbers", Phrase("#: # holds more than one number. Give one, such as #.")},
    {"too_large", Phrase("#: # is larger than any number this can use. #")},
    {"unit_needed", Phrase("#: # is a fraction without its unit. Add it, such as #.")},
    {"inch_fraction", Phrase("#: # is a fraction of a millimetre, and such fractions are of an "
                             "inch. Did you mean # in?")},
    {"unknown_unit", Phrase("#: #: the unit # is not known here. Use #, such as #.")},
    {"wrong_dimension", Phrase("#: # is #, and # is asked for: use #, such as #.")},
    {"thousands", Phrase("#: # can be read as # or as #. Write the one that is meant so.")},
    {"below_range", Phrase("#: # is less than this can use. #")},
    {"above_range", Phrase("#: # is more than this can use. #")},
};

Phrase sentence_of(const ReadProblem& problem, const QuantityRequest& request) {
  if (problem.divides_twice) return Phrase("#: # divides twice. Something like # would do.");
  if (problem.code == "below_range" && problem.number < 0 &&
      request.dimension != Dimension::temperature)
    return Phrase("#: # is below zero. #");
  for (const Sentence& sentence : sentences_of_codes)
    if (sentence.code == problem.code) return sentence.phrase;
  return {};
}

}  // namespace

std::string say_missing(Phrase label, std::string_view example) {
  return say("# is missing. Something like # would do.", {label, quantity_in_words(example)});
}

std::string say(const ReadProblem& problem, Phrase label, const QuantityRequest& request) {
  const std::string_view code = problem.code;
  const std::string example = quantity_in_words(request.example);
  if (code == "missing") return say_missing(label, request.example);
  std::string more[4] = {example};
  if (code == "too_long") {
    more[0] = std::to_string(problem.length);
    more[1] = example;
  } else if (code == "inch_fraction") {
    more[0] = problem.fraction;
  } else if (code == "unknown_unit") {
    more[0] = in_quotes(problem.unit);
    more[1] = units_of(request.dimension);
    more[2] = example;
  } else if (code == "wrong_dimension") {
    more[0] = say(words_of(problem.dimension).noun);
    more[1] = say(words_of(request.dimension).noun);
    more[2] = units_of(request.dimension);
    more[3] = example;
  } else if (code == "thousands") {
    more[0] = trimmed(problem.number, 3);
    more[1] = trimmed(1000.0 * problem.number, 0);
  } else if (code == "too_large" || code == "below_range" || code == "above_range") {
    more[0] = say("Anything from # to # would do.",
                  {quantity_in_words(request.least_text), quantity_in_words(request.most_text)});
    if (problem.meant_psi)
      more[0] = sentences({more[0], say("Did you mean #?", {trimmed(problem.number, 1) + " psi"})});
  }
  return say(sentence_of(problem, request),
             {label, in_quotes(problem.written), more[0], more[1], more[2], more[3]});
}

}  // namespace treadwater
