#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/closing_cards.h"
#include "app/windows/day_field.h"
#include "app/words/say.h"

#include <QSignalBlocker>

#include <algorithm>

namespace topwire {

namespace {

constexpr int fruitWidth = 64;
constexpr int rowsWidth = 120;

QLineEdit* fruitField(std::optional<int> fruit, const QString& name) {
  auto* field = new QLineEdit{fruit ? QString::number(*fruit) : QString{}};
  field->setFixedWidth(fruitWidth);
  field->setAlignment(Qt::AlignRight);
  field->setAccessibleName(name);
  return field;
}

QLabel* problemLabel(const std::string& code) {
  QLabel* label = textLabel({}, TypeSize::small, true);
  label->setObjectName(QStringLiteral("message-%1").arg(QString::fromStdString(code)));
  label->setWordWrap(true);
  label->setVisible(false);
  return label;
}

/// Whatever cannot be read as a count is out of range, so that closing names it.
std::optional<int> fruitIn(const QLineEdit& field) {
  const QString typed = field.text().trimmed();
  if (typed.isEmpty()) return std::nullopt;
  bool read = false;
  const int fruit = typed.toInt(&read);
  return read ? fruit : -1;
}

/// Shows, of problems placed "code.field", those of this code and these fields.
void tellUnder(QLabel& label,
               const std::string& code,
               std::initializer_list<const char*> fields,
               const Problems& problems) {
  QStringList said;
  for (const Problem& problem : problems)
    for (const char* field : fields)
      if (problem.place == code + '.' + field) said << say(problem.sentence);
  label.setText(said.join(u' '));
  label.setVisible(!said.isEmpty());
}

void addHeadings(QGridLayout& grid, const QStringList& words) {
  for (int column = 0; column < words.size(); ++column)
    grid.addWidget(mutedLabel(words[column]), 0, column);
}

}  // namespace

NextLeafCard::NextLeafCard(Session& session)
    : StepCard(3,
               tr("Class and fruit for the next leaf"),
               tr("Proposed from what was measured; you have the last word."))
    , session_(&session)
    , grid_(new QGridLayout) {
  setObjectName(QStringLiteral("nextLeafCard"));
  grid_->setHorizontalSpacing(12);
  grid_->setVerticalSpacing(6);
  grid_->setColumnStretch(0, 1);
  lines().addLayout(grid_);
}

void NextLeafCard::show(const ClosingDraft& draft) {
  emptyOut(*grid_);
  shown_.clear();
  leaves_ = draft.leaves();
  addHeadings(*grid_, {tr("Planting"), tr("Class"), tr("Fruit a tree, from"), tr("to")});
  for (const SeasonTarget& target : draft.proposal().targets)
    if (const NextLeaf* leaf = draft.leafOf(target.of.planting)) addLine(target, *leaf);
}

void NextLeafCard::addLine(const SeasonTarget& target, const NextLeaf& leaf) {
  const Orchard& orchard = session_->orchard();
  const QString name = plantingName(orchard, leaf.planting);
  const std::string& code = orchard.plantings.at(leaf.planting).code;
  const QString tail = QString::fromStdString(code);
  auto* vigour = new QComboBox;
  vigour->setObjectName(QStringLiteral("class-") + tail);
  vigour->setAccessibleName(tr("Class of %1").arg(name));
  for (const Vigour one : {Vigour::weak, Vigour::moderate, Vigour::strong})
    vigour->addItem(nameOf(one), static_cast<int>(one));
  vigour->setCurrentIndex(static_cast<int>(target.vigour.value_or(leaf.held)));
  auto* from =
      fruitField(target.fruitFrom, tr("Least fruit a tree to keep, %1").arg(name));
  auto* to = fruitField(target.fruitTo, tr("Most fruit a tree to keep, %1").arg(name));
  from->setObjectName(QStringLiteral("fruitFrom-") + tail);
  to->setObjectName(QStringLiteral("fruitTo-") + tail);
  QStringList reasons;
  for (const Sentence& reason : leaf.vigourReasons) reasons << say(reason);
  for (const Sentence& reason : leaf.fruitReasons) reasons << say(reason);
  QLabel* problem = problemLabel(code);
  for (QWidget* field : {static_cast<QWidget*>(vigour),
                         static_cast<QWidget*>(from),
                         static_cast<QWidget*>(to)})
    field->setEnabled(!session_->isReadOnly());
  int row = grid_->rowCount();
  QLabel* whose = textLabel(tr("%1 · %2").arg(name, leafText(leaf.leaf)));
  whose->setWordWrap(true);
  grid_->addWidget(whose, row, 0);
  grid_->addWidget(vigour, row, 1);
  grid_->addWidget(from, row, 2, Qt::AlignRight);
  grid_->addWidget(to, row, 3);
  if (!reasons.isEmpty()) {
    QLabel* why = mutedLabel(reasons.join(u' '));
    why->setWordWrap(true);
    grid_->addWidget(why, ++row, 0, 1, 4);
  }
  grid_->addWidget(problem, ++row, 0, 1, 4);
  const std::size_t index = shown_.size();
  shown_.push_back({target, code, leaf.held, vigour, from, to, problem});
  connect(vigour, &QComboBox::activated, this, [this, index] { take(index); });
  connect(from, &QLineEdit::editingFinished, this, [this, index] { take(index); });
  connect(to, &QLineEdit::editingFinished, this, [this, index] { take(index); });
}

/// A class chosen against the proposal is the grower's word, and no longer its reasons'.
void NextLeafCard::take(std::size_t index) {
  Line& line = shown_[index];
  SeasonTarget target = line.target;
  const auto vigour = static_cast<Vigour>(line.vigour->currentData().toInt());
  if (vigour != target.vigour.value_or(line.held)) {
    target.vigour = vigour == line.held ? std::nullopt : std::optional{vigour};
    target.vigourReason =
        target.vigour ? tr("settled when the season was closed").toStdString() : "";
  }
  target.fruitFrom = fruitIn(*line.from);
  target.fruitTo = fruitIn(*line.to);
  if (target == line.target) return;
  line.target = target;
  Q_EMIT chosen(target);
}

void NextLeafCard::tell(const Problems& problems) {
  for (Line& line : shown_)
    tellUnder(*line.problem, line.code, {"fruit", "vigour", "note"}, problems);
}

ReplantsCard::ReplantsCard(Session& session)
    : StepCard(4,
               tr("Missing trees"),
               tr("Where trees are missing, replants of the same kind are planned for "
                  "the coming spring. Say how many; none is planned for 0."))
    , session_(&session)
    , grid_(new QGridLayout) {
  setObjectName(QStringLiteral("replantsCard"));
  grid_->setHorizontalSpacing(12);
  grid_->setVerticalSpacing(6);
  grid_->setColumnStretch(0, 1);
  lines().addLayout(grid_);
}

void ReplantsCard::show(const ClosingDraft& draft) {
  emptyOut(*grid_);
  shown_.clear();
  addHeadings(*grid_,
              {tr("Planting"), tr("Missing trees"), tr("In rows"), tr("Planted on")});
  std::vector<ProposedReplant> replants = draft.proposal().replants;
  std::ranges::stable_sort(
      replants, std::ranges::greater{}, [](const ProposedReplant& replant) {
        return replant.trees > 0;
      });
  for (const ProposedReplant& replant : replants) addLine(replant);
}

void ReplantsCard::addLine(const ProposedReplant& replant) {
  const Orchard& orchard = session_->orchard();
  const Planting& host = orchard.plantings.at(replant.host);
  const QString name = plantingName(orchard, replant.host);
  const QString tail = QString::fromStdString(host.code);
  auto* trees = new QSpinBox;
  trees->setObjectName(QStringLiteral("missing-") + tail);
  trees->setAccessibleName(tr("Missing trees in %1").arg(name));
  trees->setRange(0, std::max(1, treesIn(orchard, host)));
  trees->setValue(replant.trees);
  auto* rows = new QLineEdit{QString::fromStdString(rowsText(replant.rows))};
  rows->setObjectName(QStringLiteral("replantRows-") + tail);
  rows->setAccessibleName(tr("Rows of the replants in %1").arg(name));
  rows->setFixedWidth(rowsWidth);
  QDateEdit* planted = dayField();
  planted->setObjectName(QStringLiteral("replanted-") + tail);
  planted->setAccessibleName(tr("Day of replanting in %1").arg(name));
  planted->setDate(dateOf(replant.planted));
  QLabel* problem = problemLabel(host.code);
  for (QWidget* field : {static_cast<QWidget*>(trees),
                         static_cast<QWidget*>(rows),
                         static_cast<QWidget*>(planted)})
    field->setEnabled(!session_->isReadOnly());
  const int row = grid_->rowCount();
  QLabel* whose = textLabel(name);
  whose->setWordWrap(true);
  grid_->addWidget(whose, row, 0);
  grid_->addWidget(trees, row, 1);
  grid_->addWidget(rows, row, 2);
  grid_->addWidget(planted, row, 3);
  grid_->addWidget(problem, row + 1, 0, 1, 4);
  const std::size_t index = shown_.size();
  shown_.push_back({replant, host.code, trees, rows, planted, problem});
  connect(trees, &QSpinBox::valueChanged, this, [this, index] { take(index); });
  connect(rows, &QLineEdit::editingFinished, this, [this, index] { take(index); });
  connect(planted, &QDateEdit::dateChanged, this, [this, index] { take(index); });
}

void ReplantsCard::take(std::size_t index) {
  Line& line = shown_[index];
  ProposedReplant replant = line.replant;
  replant.trees = line.trees->value();
  replant.rows = parseRows(line.rows->text().toStdString()).rows;
  replant.planted = dayOf(line.planted->date());
  if (replant == line.replant) return;
  line.replant = replant;
  Q_EMIT chosen(replant);
}

void ReplantsCard::tell(const Problems& problems) {
  for (Line& line : shown_)
    tellUnder(*line.problem,
              line.code,
              {"trees", "rows", "planted", "code", "programme", "treeSpacing"},
              problems);
}

}  // namespace topwire
