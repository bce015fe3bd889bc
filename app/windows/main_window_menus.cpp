#include "app/look/look.h"
#include "app/windows/blocks_page.h"
#include "app/windows/main_window.h"
#include "app/words/say.h"

#include <QActionGroup>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>

namespace topwire {

namespace {

/// The menus stand on the rail's dark ground, so that the frame is of one piece.
void colourMenuBar(QMenuBar& bar) {
  const BaseColours& colours = baseColours(currentTheme());
  QPalette palette = QApplication::palette();
  palette.setColor(QPalette::Window, colours.rail);
  palette.setColor(QPalette::WindowText, colours.railText);
  palette.setColor(QPalette::Highlight, colours.window);
  palette.setColor(QPalette::HighlightedText, colours.text);
  bar.setPalette(palette);
}

QAction* keyed(QAction* action, const char* name, const QKeySequence& keys) {
  action->setObjectName(QLatin1String(name));
  action->setShortcut(keys);
  return action;
}

QAction* needingOrchard(QAction* action) {
  action->setProperty("needsOrchard", true);
  return action;
}

}  // namespace

void MainWindow::buildMenus() {
  setMenuBar(new QMenuBar);
  colourMenuBar(*menuBar());
  buildFileMenu();
  buildEditMenu();
  buildViewMenu();
  buildHelpMenu();
}

void MainWindow::buildFileMenu() {
  QMenu* file = menuBar()->addMenu(tr("&File"));
  keyed(file->addAction(tr("&New orchard..."), this, &MainWindow::newOrchard),
        "actionNew",
        QKeySequence{Qt::CTRL | Qt::Key_N});
  keyed(file->addAction(tr("&Open..."), this, &MainWindow::openOrchard),
        "actionOpen",
        QKeySequence{Qt::CTRL | Qt::Key_O});
  recent_ = file->addMenu(tr("Open &recent"));
  recent_->setObjectName(QStringLiteral("menuRecent"));
  connect(file, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
  file->addSeparator();
  needingOrchard(
      keyed(file->addAction(tr("Save a &copy..."), this, &MainWindow::saveCopy),
            "actionSaveCopy",
            QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_S}));
  needingOrchard(
      keyed(file->addAction(tr("&Print this week..."), this, &MainWindow::printWeek),
            "actionPrint",
            QKeySequence{Qt::CTRL | Qt::Key_P}));
  file->addSeparator();
  keyed(file->addAction(tr("&Quit"), this, &QWidget::close),
        "actionQuit",
        QKeySequence{Qt::CTRL | Qt::Key_Q});
}

void MainWindow::buildEditMenu() {
  QMenu* edit = menuBar()->addMenu(tr("&Edit"));
  undo_ = keyed(edit->addAction(tr("&Undo"), this, &MainWindow::undo),
                "actionUndo",
                QKeySequence{Qt::CTRL | Qt::Key_Z});
  redo_ = keyed(edit->addAction(tr("&Redo"), this, &MainWindow::redo),
                "actionRedo",
                QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_Z});
  edit->addSeparator();
  QAction* add = edit->addAction(tr("&Add a block"), this, [this] {
    showPage(RailPage::blocks);
    blocks_->addBlock();
  });
  needingOrchard(
      keyed(add, "actionAddBlock", QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_B}));
  QAction* close = edit->addAction(
      tr("&Close the season..."), this, [this] { showPage(RailPage::closing); });
  needingOrchard(keyed(close, "actionCloseSeason", {}));
}

void MainWindow::buildViewMenu() {
  QMenu* view = menuBar()->addMenu(tr("&View"));
  const auto addPage = [&](const QString& name, RailPage page, Qt::Key key) {
    QAction* action = view->addAction(name, this, [this, page] { showPage(page); });
    keyed(action, "", QKeySequence{Qt::CTRL | key});
  };
  addPage(tr("&Today"), RailPage::today, Qt::Key_1);
  addPage(tr("&Calendar"), RailPage::calendar, Qt::Key_2);
  addPage(tr("&Blocks"), RailPage::blocks, Qt::Key_3);
  addPage(tr("&Weather"), RailPage::weather, Qt::Key_4);
  addPage(tr("&Settings"), RailPage::settings, Qt::Key_5);
  addPage(tr("&Material"), RailPage::material, Qt::Key_6);
  addPage(tr("&Programme"), RailPage::programme, Qt::Key_7);
  addPage(tr("&Labour"), RailPage::labour, Qt::Key_8);
  view->addSeparator();
  QMenu* themes = view->addMenu(tr("C&olours"));
  auto* group = new QActionGroup{themes};
  const auto addTheme = [&](const QString& name, std::optional<Theme> theme) {
    QAction* action = themes->addAction(name, this, [this, theme] {
      preferences_->setTheme(theme);
      takeTheme();
    });
    action->setCheckable(true);
    action->setChecked(preferences_->theme() == theme);
    group->addAction(action);
  };
  addTheme(tr("As the &desktop is"), std::nullopt);
  addTheme(tr("&Light"), Theme::light);
  addTheme(tr("D&ark"), Theme::dark);
  QMenu* languages = view->addMenu(tr("&Language"));
  const auto addLanguage = [&](const QString& name, const QString& locale) {
    languages->addAction(name, this, [this, locale] {
      preferences_->setLanguage(locale);
      QMetaObject::invokeMethod(this, &MainWindow::takeLanguage, Qt::QueuedConnection);
    });
  };
  addLanguage(tr("As the &system is"), {});
  addLanguage(QStringLiteral("English"), QStringLiteral("en"));
  addLanguage(QStringLiteral("Español"), QStringLiteral("es"));
}

void MainWindow::buildHelpMenu() {
  QMenu* help = menuBar()->addMenu(tr("&Help"));
  keyed(help->addAction(tr("&Keys"), this, &MainWindow::showKeys),
        "actionKeys",
        QKeySequence{Qt::Key_F1});
  help->addAction(tr("&About Topwire"), this, &MainWindow::showAbout)
      ->setObjectName(QStringLiteral("actionAbout"));
}

void MainWindow::takeTheme() {
  applyLook(*qApp, preferences_->theme().value_or(desktopTheme()));
  colourMenuBar(*menuBar());
  refresh();
}

void MainWindow::takeLanguage() {
  speak(preferences_->language());
  const RailPage open = page();
  build();
  showPage(open);
}

void MainWindow::showKeys() {
  QStringList lines;
  for (const QAction* action : findChildren<QAction*>()) {
    if (action->shortcut().isEmpty()) continue;
    QString words = action->text().section(QLatin1Char(':'), 0, 0);
    words.remove(QLatin1Char('&')).remove(QStringLiteral("..."));
    lines << tr("%1: %2").arg(action->shortcut().toString(QKeySequence::NativeText),
                              words);
  }
  lines << tr("Tab, Shift+Tab: from field to field")
        << tr("Alt and an underlined letter: that button")
        << tr("Arrows: between days, bars, rows and blocks");
  questions_->show(this, tr("Keys"), lines.join(QLatin1Char('\n')));
}

void MainWindow::showAbout() {
  const QString about =
      tr("Topwire %1\n\nDated field tasks for high-density apple blocks.\n\nFree "
         "software "
         "under the MIT licence.\n\nDates and figures are estimates to plan by. Labels, "
         "local rules and licensed advice go before anything said here; walk the block "
         "before you act.")
          .arg(QCoreApplication::applicationVersion());
  questions_->show(this, tr("About Topwire"), about);
}

}  // namespace topwire
