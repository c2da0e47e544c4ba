// A form is read by its fields, and there is no field of another name.
#include "core/sheets/form_reader.hpp"
#include "core/sheets/tyre_check/fields.hpp"

using namespace treadwater;
namespace form = treadwater::sheets::tyre_check;

std::optional<GaugePressure> use(sheets::FormReader& reader) {
#ifdef SHOULD_FAIL
  return reader.read(form::presure);
#else
  return reader.read(form::pressure);
#endif
}
