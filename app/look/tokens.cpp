#include "app/look/tokens.h"

#include <array>

namespace topwire {

namespace {

constexpr QRgb opaque = 0xFF000000;

QColor colour(QRgb rgb) {
  return QColor::fromRgb(rgb | opaque);
}

BaseColours base(const std::array<QRgb, 14>& c) {
  return {colour(c[0]),
          colour(c[1]),
          colour(c[2]),
          colour(c[3]),
          colour(c[4]),
          colour(c[5]),
          colour(c[6]),
          colour(c[7]),
          colour(c[8]),
          colour(c[9]),
          colour(c[10]),
          colour(c[11]),
          colour(c[12]),
          colour(c[13])};
}

StateColours state(QRgb ink, QRgb mark, QRgb tint, QRgb hatch) {
  return {colour(ink), colour(mark), colour(tint), colour(hatch)};
}

const StateColours& lightState(TaskState which) {
  static const std::array states{
      state(0x47545C, 0x586973, 0xF4F6F5, 0xE3E8E8),  // waiting
      state(0x005A91, 0x0072B2, 0xDCECF6, 0xC3DDEE),  // open
      state(0x744A00, 0xBD7700, 0xFBEACB, 0xF0CF93),  // closing
      state(0x8A3100, 0xB54100, 0xFCE2D3, 0xF3BD9C),  // late
      state(0x76245A, 0x7E2159, 0xF5E2EC, 0xE3BAD0),  // lapsed
      state(0x005E45, 0x00805C, 0xD9EFE6, 0xB5DECD),  // done
      state(0x565C5F, 0x7F8687, 0xEBECEA, 0xD5D8D6),  // setAside
  };
  return states[static_cast<std::size_t>(which)];
}

const StateColours& darkState(TaskState which) {
  static const std::array states{
      state(0xB7C4CB, 0xA9BAC3, 0x1F292B, 0x2C383B),  // waiting
      state(0x83CBF6, 0x56B4E9, 0x163648, 0x1F4A62),  // open
      state(0xF4BE56, 0xF0B434, 0x3C2C0C, 0x5B4312),  // closing
      state(0xFF9D66, 0xE2661A, 0x45220F, 0x6B3416),  // late
      state(0xE5A5C8, 0xD079AA, 0x3B2132, 0x5B324D),  // lapsed
      state(0x5FD0AC, 0x1FAE84, 0x10362B, 0x1A5040),  // done
      state(0xB2B8B9, 0x757D7F, 0x272D2E, 0x363E3F),  // setAside
  };
  return states[static_cast<std::size_t>(which)];
}

Theme& themeInForce() {
  static Theme theme = Theme::light;
  return theme;
}

}  // namespace

const BaseColours& baseColours(Theme theme) {
  static const BaseColours light = base({0xEDEFEA,
                                         0xFAFBF8,
                                         0xFFFFFF,
                                         0x14201E,
                                         0x4F5D59,
                                         0xD2D8D1,
                                         0x71807A,
                                         0x1D4A55,
                                         0xFFFFFF,
                                         0xD9E6E6,
                                         0x0067A6,
                                         0x1B2E33,
                                         0xE8EEEC,
                                         0xAEBDBB});
  static const BaseColours dark = base({0x141A1B,
                                        0x1B2324,
                                        0x253031,
                                        0xE8EEEB,
                                        0xA8B6B2,
                                        0x384648,
                                        0x748683,
                                        0x8CC8D1,
                                        0x0B1719,
                                        0x263F44,
                                        0x7CC8F5,
                                        0x0C1112,
                                        0xDDE5E3,
                                        0x93A3A0});
  return theme == Theme::light ? light : dark;
}

const StateColours& stateColours(Theme theme, TaskState which) {
  return theme == Theme::light ? lightState(which) : darkState(which);
}

Theme currentTheme() {
  return themeInForce();
}

void setCurrentTheme(Theme theme) {
  themeInForce() = theme;
}

}  // namespace topwire
