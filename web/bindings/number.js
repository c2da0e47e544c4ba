// The browser already reads decimal numbers exactly: the C library's strtod, with its 128-bit
// arithmetic, would be a twentieth of the first module (number.cpp).
mergeInto(LibraryManager.library, {
  number_at: function (text) {
    let digits = '';
    while (HEAPU8[text]) digits += String.fromCharCode(HEAPU8[text++]);
    return parseFloat(digits) || 0;
  },
});
