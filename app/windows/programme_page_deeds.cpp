#include "app/windows/operation_form.h"
#include "app/windows/programme_page.h"
#include "app/windows/programme_panels.h"
#include "app/windows/questions.h"
#include "app/windows/two_line_list.h"
#include "app/words/resources.h"
#include "app/words/say.h"
#include "core/edit/programme_deeds.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace topwire {

namespace {

constexpr qint64 largestFile = 4 << 20;

}  // namespace

void ProgrammePage::keep() {
  if (!draft_) return;
  const Problems problems = takeTyped();
  if (!problems.empty()) return form_->showAllFaults(problems);
  const std::string text = draft_->text();
  session_->performOrTell(editProgramme(session_->orchard(), draft_->base().id, text));
}

void ProgrammePage::leave() {
  draft_.reset();
  typed_ = false;
  later_.stop();
  followRecord();
  fillOperations();
  showChosen();
}

void ProgrammePage::copyOperation() {
  const Operation* chosen = operation();
  if (!draft_ || chosen == nullptr || !takeTyped().empty()) return;
  const auto id = draft_->copy(chosen->id);
  if (!id) return form_->showAllFaults({id.error()});
  fillOperations();
  operations_->choose(QString::fromStdString(*id));
  showChosen();
}

void ProgrammePage::removeOperation() {
  const Operation* chosen = operation();
  if (!draft_ || chosen == nullptr) return;
  const Problems problems = draft_->remove(chosen->id);
  if (!problems.empty()) return form_->showAllFaults(problems);
  typed_ = false;
  fillOperations();
  showChosen();
}

std::optional<std::string> ProgrammePage::textOf(const std::string& id) const {
  const auto own = session_->orchard().programmes.find(id);
  if (own != session_->orchard().programmes.end()) return own->second.text;
  return shippedProgrammeText(id);
}

void ProgrammePage::copyProgramme() {
  const Programme* shown = programme();
  if (shown == nullptr) return;
  const auto text = textOf(programmeId());
  if (!text) return;
  stack_->setCurrentWidget(copyPanel_);
  copyPanel_->start(*shown, *text);
}

void ProgrammePage::choosePlantings() {
  if (programme() == nullptr) return;
  stack_->setCurrentWidget(plantingsPanel_);
  plantingsPanel_->start(programmeId());
}

void ProgrammePage::saveAsFile() {
  const auto text = textOf(programmeId());
  if (!text) return;
  const QString path = questions_->programmeToMake(
      this, QString::fromStdString(programmeId()) + QStringLiteral(".toml"));
  if (path.isEmpty()) return;
  QSaveFile file{path};
  const QByteArray bytes = QByteArray::fromStdString(*text);
  const bool written = file.open(QIODevice::WriteOnly)
                       && file.write(bytes) == bytes.size() && file.commit();
  if (written) return;
  Q_EMIT session_->troubled(
      {Sentence{phrase("File", "%1 could not be written; choose another folder."),
                {path.toStdString()}},
       {},
       {}});
}

void ProgrammePage::bringIn() {
  const QString path = questions_->programmeToOpen(this);
  if (path.isEmpty()) return;
  const std::string name = QFileInfo{path}.fileName().toStdString();
  QFile file{path};
  const bool readable = file.open(QIODevice::ReadOnly) && file.size() <= largestFile;
  const Checked<Change> change =
      readable ? bringInProgramme(session_->orchard(),
                                  session_->shippedProgrammes(),
                                  file.readAll().toStdString(),
                                  name)
               : tl::unexpected{Problems{
                   {Sentence{phrase("File",
                                    "%1 can't be read as a programme; look at its name "
                                    "and size."),
                             {name}},
                    {},
                    {}}}};
  const Problems problems = session_->perform(change);
  if (problems.empty()) {
    for (const AnyEdit& edit : change->edits)
      if (const auto* own = std::get_if<Edit<OwnProgramme>>(&edit))
        programmes_->choose(QString::fromStdString(own->after->id));
    return backToOperation();
  }
  stack_->setCurrentWidget(faultsPanel_);
  faultsPanel_->show(tr("%1 was not brought in").arg(QString::fromStdString(name)),
                     problems);
}

void ProgrammePage::removeProgramme() {
  const Programme* shown = programme();
  if (shown == nullptr) return;
  const QString name = say(shown->name);
  if (!questions_->confirm(
          this, tr("Remove %1? Undo brings it back.").arg(name), tr("&Remove it")))
    return;
  session_->performOrTell(topwire::removeProgramme(session_->orchard(), programmeId()));
}

}  // namespace topwire
