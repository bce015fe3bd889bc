#include "app/windows/programme_page.h"

#include "app/look/card.h"
#include "app/windows/effect_panel.h"
#include "app/windows/operation_form.h"
#include "app/windows/operation_view.h"
#include "app/windows/page_head.h"
#include "app/windows/programme_panels.h"
#include "app/windows/programme_words.h"
#include "app/windows/questions.h"
#include "app/windows/two_line_list.h"
#include "app/words/resources.h"
#include "app/words/say.h"
#include "core/edit/programme_deeds.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace topwire {

namespace {

constexpr int sideWidth = 288;
constexpr int pauseInTyping = 200;  ///< milliseconds

QScrollArea* scrolled(QWidget* inner) {
  auto* area = new QScrollArea;
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  inner->setAutoFillBackground(false);
  area->setWidget(inner);
  area->viewport()->setAutoFillBackground(false);
  return area;
}

std::string mostUsed(const Session& session) {
  const Programmes& all = session.programmes();
  const auto most = std::ranges::max_element(all, {}, [&session](const auto& entry) {
    return plantingsUsing(session.orchard(), entry.first).size();
  });
  return most == all.end() ? std::string{} : most->first;
}

}  // namespace

ProgrammePage::ProgrammePage(Session& session, Questions& questions, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , questions_(&questions)
    , head_(new PageHead)
    , programmes_(new TwoLineList)
    , operations_(new TwoLineList)
    , stack_(new QStackedWidget)
    , view_(new OperationView(session))
    , form_(new OperationForm)
    , effect_(new EffectPanel(session, tr("&Keep the change")))
    , copyPanel_(new ProgrammeCopyPanel(session))
    , plantingsPanel_(new ProgrammePlantingsPanel(session))
    , faultsPanel_(new ProgrammeFaultsPanel) {
  setObjectName(QStringLiteral("programmePage"));
  makeHead();
  stack_->addWidget(viewArea_ = scrolled(view_));
  stack_->addWidget(editor_ = makeEditor());
  for (QWidget* panel : {static_cast<QWidget*>(copyPanel_),
                         static_cast<QWidget*>(plantingsPanel_),
                         static_cast<QWidget*>(faultsPanel_)})
    stack_->addWidget(panel);
  auto* columns = new QHBoxLayout;
  columns->setSpacing(16);
  columns->addWidget(makeSide());
  columns->addWidget(stack_, 1);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  lines->addWidget(head_);
  lines->addLayout(columns, 1);
  later_.setSingleShot(true);
  later_.setInterval(pauseInTyping);
  listen();
  refresh();
}

void ProgrammePage::makeHead() {
  copy_ = head_->addButton(tr("Copy to &change it"), "copyProgramme");
  choose_ = head_->addButton(tr("Choose &plantings"), "choosePlantings");
  save_ = head_->addButton(tr("&Save as a file"), "saveProgramme");
  bring_ = head_->addButton(tr("&Bring in"), "bringInProgramme");
  remove_ = head_->addButton(tr("Re&move"), "removeProgramme");
}

QWidget* ProgrammePage::makeSide() {
  programmes_->setObjectName(QStringLiteral("programmeList"));
  programmes_->setAccessibleName(tr("Programmes"));
  operations_->setObjectName(QStringLiteral("operationList"));
  operations_->setAccessibleName(tr("Work of the programme"));
  auto* card = new Card{QPalette::Base};
  card->setFixedWidth(sideWidth);
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(1, 8, 1, 8);
  lines->setSpacing(8);
  lines->addWidget(programmes_);
  lines->addWidget(hairline());
  lines->addWidget(operations_, 1);
  return card;
}

QWidget* ProgrammePage::makeEditor() {
  copyOperation_ = new QPushButton{tr("C&opy this work")};
  copyOperation_->setObjectName(QStringLiteral("copyOperation"));
  removeOperation_ = new QPushButton{tr("&Take this work out")};
  removeOperation_->setObjectName(QStringLiteral("removeOperation"));
  auto* card = new Card{QPalette::Light};
  auto* inCard = new QVBoxLayout{card};
  inCard->setContentsMargins(0, 0, 0, 12);
  inCard->addWidget(form_);
  auto* deeds = new QHBoxLayout;
  deeds->setContentsMargins(20, 0, 20, 4);
  deeds->addWidget(copyOperation_);
  deeds->addWidget(removeOperation_);
  deeds->addStretch();
  inCard->addLayout(deeds);
  auto* editor = new QWidget;
  auto* lines = new QVBoxLayout{editor};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(8);
  lines->addWidget(scrolled(card), 1);
  lines->addWidget(effect_);
  return editor;
}

void ProgrammePage::listen() {
  connect(session_, &Session::changed, this, &ProgrammePage::refresh);
  connect(session_, &Session::reset, this, &ProgrammePage::backToOperation);
  connect(programmes_, &TwoLineList::currentItemChanged, this, [this] {
    draft_.reset();
    followRecord();
    fillOperations();
    backToOperation();
  });
  connect(operations_,
          &TwoLineList::currentItemChanged,
          this,
          &ProgrammePage::chooseOperation);
  connect(form_, &OperationForm::edited, this, [this] {
    typed_ = true;
    later_.start();
  });
  connect(&later_, &QTimer::timeout, this, &ProgrammePage::followTyping);
  connect(effect_, &EffectPanel::kept, this, &ProgrammePage::keep);
  connect(effect_, &EffectPanel::left, this, &ProgrammePage::leave);
  connect(copyOperation_, &QPushButton::clicked, this, &ProgrammePage::copyOperation);
  connect(removeOperation_, &QPushButton::clicked, this, &ProgrammePage::removeOperation);
  connect(copy_, &QPushButton::clicked, this, &ProgrammePage::copyProgramme);
  connect(choose_, &QPushButton::clicked, this, &ProgrammePage::choosePlantings);
  connect(save_, &QPushButton::clicked, this, &ProgrammePage::saveAsFile);
  connect(bring_, &QPushButton::clicked, this, &ProgrammePage::bringIn);
  connect(remove_, &QPushButton::clicked, this, &ProgrammePage::removeProgramme);
  connect(copyPanel_, &ProgrammeCopyPanel::left, this, &ProgrammePage::backToOperation);
  connect(copyPanel_, &ProgrammeCopyPanel::made, this, [this](const std::string& id) {
    programmes_->choose(QString::fromStdString(id));
    backToOperation();
    operations_->setFocus(Qt::OtherFocusReason);
  });
  connect(plantingsPanel_,
          &ProgrammePlantingsPanel::left,
          this,
          &ProgrammePage::backToOperation);
  connect(
      faultsPanel_, &ProgrammeFaultsPanel::left, this, &ProgrammePage::backToOperation);
}

std::string ProgrammePage::programmeId() const {
  return programmes_->chosen().toStdString();
}

const Programme* ProgrammePage::programme() const {
  if (!session_->isOpen()) return nullptr;
  if (draft_) return &draft_->programme();
  const auto found = session_->programmes().find(programmeId());
  return found == session_->programmes().end() ? nullptr : &found->second;
}

const Operation* ProgrammePage::operation() const {
  const Programme* chosen = programme();
  return chosen == nullptr ? nullptr : chosen->find(operations_->chosen().toStdString());
}

void ProgrammePage::refresh() {
  if (!session_->isOpen()) return;
  fillProgrammes();
  followRecord();
  fillOperations();
  const bool choosing = stack_->currentWidget() == plantingsPanel_;
  if (choosing && plantingsPanel_->isAbout(programmeId()))
    return plantingsPanel_->start(programmeId());
  const bool reading =
      stack_->currentWidget() == viewArea_ || stack_->currentWidget() == editor_;
  if (choosing || reading) stack_->setCurrentWidget(draft_ ? editor_ : viewArea_);
  showChosen();
}

/// What was typed of the work chosen before goes into the draft first; while it can't,
/// the choice stays.
void ProgrammePage::chooseOperation() {
  const Problems problems = takeTyped();
  if (problems.empty()) return backToOperation();
  const QSignalBlocker quiet{operations_};
  operations_->choose(QString::fromStdString(form_->operation().id));
  form_->showAllFaults(problems);
}

/// A draft stands for an own programme that may be changed, as long as its record is the
/// one it began from.
void ProgrammePage::followRecord() {
  const auto own = session_->orchard().programmes.find(programmeId());
  const bool mayChange = own != session_->orchard().programmes.end()
                         && !session_->isReadOnly()
                         && session_->programmes().contains(programmeId());
  if (draft_ && mayChange && draft_->base() == own->second) return;
  typed_ = false;
  draft_.reset();
  if (mayChange) draft_.emplace(own->second);
}

void ProgrammePage::fillProgrammes() {
  const QSignalBlocker quiet{programmes_};
  const QString before = programmes_->chosen();
  programmes_->clear();
  for (const auto& [id, programme] : session_->programmes())
    programmes_->addEntry(
        QString::fromStdString(id), say(programme.name), programmeLine(*session_, id));
  if (!programmes_->choose(before))
    programmes_->choose(QString::fromStdString(mostUsed(*session_)));
  constexpr int mostHeight = 190;
  programmes_->setFixedHeight(std::min(programmes_->contentHeight() + 2, mostHeight));
}

void ProgrammePage::fillOperations() {
  const QSignalBlocker quiet{operations_};
  const QString before = operations_->chosen();
  operations_->clear();
  const Programme* shown = programme();
  if (shown == nullptr) return;
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  for (int group = 0; group <= static_cast<int>(LeafGroup::later); ++group) {
    bool headed = false;
    for (const Operation& one : shown->operations) {
      if (groupOf(one) != static_cast<LeafGroup>(group)) continue;
      if (!std::exchange(headed, true))
        operations_->addHeading(nameOf(static_cast<LeafGroup>(group)));
      operations_->addEntry(QString::fromStdString(one.id),
                            say(one.name),
                            windowText(one, *shown, hemisphere));
    }
  }
  if (!operations_->choose(before)) operations_->setCurrentRow(1);
}

void ProgrammePage::showChosen() {
  showButtons();
  const Programme* shown = programme();
  const Operation* chosen = operation();
  if (shown == nullptr || chosen == nullptr) return;
  head_->say(say(shown->name), say(shown->summary));
  if (!draft_) {
    view_->show(*chosen, *shown);
    return;
  }
  if (typed_) return;
  form_->fill(*chosen, *shown);
  showEffect();
}

void ProgrammePage::showButtons() {
  const bool open = session_->isOpen() && programme() != nullptr;
  const bool writable = open && !session_->isReadOnly();
  const bool own = open && session_->orchard().programmes.contains(programmeId());
  const bool settled = !typed_ && !(draft_ && draft_->isChanged());
  for (QPushButton* button : {copy_, choose_, bring_, remove_})
    button->setEnabled(writable && settled);
  save_->setEnabled(open && settled);
  programmes_->setEnabled(settled);
  remove_->setVisible(own);
}

void ProgrammePage::backToOperation() {
  stack_->setCurrentWidget(draft_ ? editor_ : viewArea_);
  typed_ = false;
  later_.stop();
  if (session_->isOpen()) showChosen();
}

/// What is typed goes into the draft; what stands against it.
Problems ProgrammePage::takeTyped() {
  later_.stop();
  if (!draft_ || !typed_) return {};
  Problems problems = form_->unreadable();
  if (problems.empty()) problems = draft_->take(form_->operation());
  typed_ = !problems.empty();
  return problems;
}

void ProgrammePage::followTyping() {
  const Problems problems = takeTyped();
  form_->showFaults(problems);
  operations_->setEnabled(problems.empty());
  showButtons();
  if (problems.empty())
    showEffect();
  else
    effect_->showFault(say(problems.front().sentence));
}

void ProgrammePage::showEffect() {
  showButtons();
  operations_->setEnabled(true);
  if (!draft_) return;
  if (!draft_->isChanged())
    return effect_->showNothing(
        tr("Change a field, and what it does to the plan stands here."));
  const auto change =
      editProgramme(session_->orchard(), draft_->base().id, draft_->text());
  if (change) effect_->show(session_->effectOf(*change), draft_->programme());
}

}  // namespace topwire
