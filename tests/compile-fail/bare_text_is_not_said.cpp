// What a person reads is a phrase, which is translated, or was typed or written; never a bare
// literal.
#include "core/words/say.hpp"

using namespace treadwater;

#ifdef SHOULD_FAIL
Text label() { return "Tread depth"; }
#else
Text label() { return Phrase("Tread depth"); }
#endif
