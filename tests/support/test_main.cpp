#include <gmock/gmock.h>

#include <cstdlib>

/// Tests run where hidden assumptions show: half a day ahead of Greenwich with summer
/// time in January, no window system, and by default a locale that writes a decimal comma
/// where it is installed.
int main(int argc, char** argv) {
  setenv("QT_QPA_PLATFORM", "offscreen", 0);
  setenv("TZ", "Pacific/Auckland", 0);
  setenv("LC_ALL", "C.UTF-8", 0);
  setenv("XDG_RUNTIME_DIR", "/tmp", 0);
  testing::InitGoogleMock(&argc, argv);
  return RUN_ALL_TESTS();
}
