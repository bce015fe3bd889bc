#include <QApplication>

#include <gmock/gmock.h>

#include <memory>

namespace topwire {

namespace {

/// One QApplication for every test of this program: most paint text or show a window, and
/// a process may have no second one.
class ApplicationEnvironment final : public ::testing::Environment {
public:
  void SetUp() override {
    if (qApp == nullptr)
      application_ = std::make_unique<QApplication>(count_, arguments_);
  }

  void TearDown() override { application_.reset(); }

private:
  int count_ = 1;
  char name_[9] = "app_test";
  char* arguments_[2] = {name_, nullptr};
  std::unique_ptr<QApplication> application_;
};

[[maybe_unused]] const auto* const environment =
    ::testing::AddGlobalTestEnvironment(new ApplicationEnvironment);

}  // namespace

}  // namespace topwire
