#pragma once

#include "app/look/look.h"
#include "app/windows/main_window.h"
#include "app/words/say.h"
#include "tests/app/memory_files.h"
#include "tests/app/next_answers.h"
#include "tests/support/builders.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>

namespace topwire::testing {

/// The real window over orchards in memory, on 6 April 2027. Widgets are found by their
/// object names, as a person finds them by their words.
class WindowTest : public ::testing::Test {
protected:
  WindowTest() {
    applyLook(*qApp, Theme::light);
    session.setToday(dayOf(2027, 4, 6));
  }

  /// Puts an orchard where a file of that name stands, and answers its path.
  QString lay(const QString& name, const Orchard& orchard) {
    const QString path = folder.filePath(name);
    QFile file{path};
    if (!file.open(QIODevice::WriteOnly))
      ADD_FAILURE() << "no room for " << name.toStdString();
    files.orchards[path.toStdString()] = orchard;
    return path;
  }

  void start(const Orchard& orchard) {
    window.openAtStart(lay(QStringLiteral("test.topwire"), orchard), folder.path());
    window.show();
    window.activateWindow();
    QCoreApplication::processEvents();
  }

  static bool isShown(const QObject& object) {
    const auto* widget = qobject_cast<const QWidget*>(&object);
    return widget != nullptr && widget->isVisible();
  }

  /// The one in sight, where several pages have one of that name.
  template <class Widget>
  Widget* find(const char* name) {
    const auto named = window.findChildren<Widget*>(QLatin1String(name));
    Widget* found = named.value(0);
    for (Widget* candidate : named)
      if (isShown(*candidate)) found = candidate;
    if (found == nullptr) throw std::runtime_error(std::string{"no widget "} + name);
    return found;
  }

  /// Until nothing more follows from what was done.
  static void settle() {
    for (int round = 0; round < 3; ++round) {
      QCoreApplication::processEvents();
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
  }

  void click(const char* name) {
    find<QPushButton>(name)->click();
    settle();
  }

  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QWidget* target = QApplication::focusWidget();
    QTest::keyClick(target != nullptr ? target : &window, key, modifiers);
    QCoreApplication::processEvents();
  }

  void type(const QString& text) {
    QTest::keyClicks(QApplication::focusWidget(), text);
    QCoreApplication::processEvents();
  }

  std::string textOf(const char* label) {
    return find<QLabel>(label)->text().toStdString();
  }

  /// Whatever a test before it spoke.
  struct Spoken {
    Spoken() { speak(QStringLiteral("en_GB")); }
  };

  Spoken spoken;
  QTemporaryDir folder;
  QSettings settings{folder.filePath(QStringLiteral("settings.ini")),
                     QSettings::IniFormat};
  Preferences preferences{settings};
  MemoryFiles files;
  FixedForecaster forecaster;
  NextAnswers answers;
  Session session{shippedTables(), shippedProgrammes(), forecaster, files, [] {
                    return std::int64_t{1'806'969'600};
                  }};
  MainWindow window{session, answers, preferences, MainWindow::TodayFrom::given};
};

}  // namespace topwire::testing
