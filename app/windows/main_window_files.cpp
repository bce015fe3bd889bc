#include "app/models/fresh_orchard.h"
#include "app/windows/main_window.h"
#include "app/windows/notice_bar.h"
#include "app/words/say.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>

namespace topwire {

namespace {

UnitSystem unitsOfLocale() {
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem
             ? UnitSystem::usCustomary
             : UnitSystem::metric;
}

QString fullPath(const QString& path) {
  return QFileInfo{path}.absoluteFilePath();
}

Problem missing(const QString& path) {
  return {Sentence{phrase("File", "%1 is no longer there. Open another file."),
                   {path.toStdString()}},
          {},
          {}};
}

}  // namespace

bool MainWindow::openAtStart(const QString& file, const QString& folder) {
  if (!file.isEmpty()) {
    if (open(fullPath(file))) return true;
  } else {
    const QStringList recent = preferences_->recentFiles();
    if (!recent.isEmpty() && open(recent.front())) return true;
  }
  // What kept the wanted file shut stays to be read while another orchard opens.
  const QString trouble = notice_->text();
  const QString standard = QDir{folder}.filePath(QStringLiteral("Orchard.topwire"));
  bool opened = false;
  if (QFileInfo::exists(standard)) {
    opened = open(standard);
  } else {
    QDir{}.mkpath(folder);
    const Done made = create(standard);
    if (!made) tellProblem(made.error());
    opened = made.has_value();
  }
  if (opened && !trouble.isEmpty()) notice_->trouble(trouble);
  if (opened && session_->orchard().blocks.empty()) showPage(RailPage::blocks);
  return opened;
}

Done MainWindow::create(const QString& path) {
  const Done made = session_->create(path,
                                     freshOrchard(session_->tables(),
                                                  tr("Our orchard").toStdString(),
                                                  unitsOfLocale(),
                                                  session_->today()));
  if (made) preferences_->remember(path);
  return made;
}

bool MainWindow::open(const QString& path) {
  if (session_->isOpen() && path == session_->path()) return true;
  if (!QFileInfo::exists(path)) {
    tellProblem(missing(path));
    return false;
  }
  const Done opened = session_->open(path, Access::write);
  if (!opened) return openToLook(path, opened.error());
  preferences_->remember(path);
  return true;
}

/// Only where looking is possible is it offered; a file that is none is refused at once.
bool MainWindow::openToLook(const QString& path, const Problem& refusal) {
  if (!session_->canLook(path)) {
    tellProblem(refusal);
    return false;
  }
  const QString question = tr("%1 You can look at it, not change it.").arg(say(refusal));
  if (!questions_->confirm(this, question, tr("&Look at it"))) return false;
  const Done opened = session_->open(path, Access::look);
  if (!opened) tellProblem(opened.error());
  return opened.has_value();
}

void MainWindow::newOrchard() {
  const QString path = questions_->fileToMake(
      this,
      tr("Make a new orchard"),
      QDir::home().filePath(tr("New orchard") + QStringLiteral(".topwire")));
  if (path.isEmpty()) return;
  const Done made = create(fullPath(path));
  if (!made) return tellProblem(made.error());
  showPage(RailPage::settings);
}

void MainWindow::openOrchard() {
  const QString path = questions_->fileToOpen(this);
  if (!path.isEmpty()) openFile(path);
}

void MainWindow::openFile(const QString& path) {
  open(fullPath(path));
}

void MainWindow::saveCopy() {
  if (!session_->isOpen()) return;
  const QFileInfo file{session_->path()};
  const QString name = tr("%1, copy of %2")
                           .arg(file.completeBaseName(),
                                QString::fromStdString(isoText(session_->today())));
  const QString path = questions_->fileToMake(
      this, tr("Save a copy"), file.dir().filePath(name + QStringLiteral(".topwire")));
  if (path.isEmpty()) return;
  tellDone(session_->copyTo(path), tr("A copy stands in %1.").arg(path));
}

void MainWindow::fillRecent() {
  recent_->clear();
  for (const QString& path : preferences_->recentFiles()) {
    const QFileInfo file{path};
    const QString name =
        file.exists()
            ? tr("%1 (%2)").arg(file.completeBaseName(), file.path())
            : tr("%1, no longer in %2").arg(file.completeBaseName(), file.path());
    QAction* action = recent_->addAction(name);
    action->setEnabled(file.exists());
    connect(action, &QAction::triggered, this, [this, path] { openFile(path); });
  }
  recent_->setEnabled(!recent_->isEmpty());
}

}  // namespace topwire
