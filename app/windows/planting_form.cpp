#include "app/windows/planting_form.h"

#include "app/look/card.h"
#include "app/windows/block_words.h"
#include "app/windows/day_field.h"
#include "app/windows/field_reader.h"
#include "app/words/say.h"
#include "core/planning/usual_programme.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace topwire {

namespace {

QComboBox* nameCombo() {
  auto* combo = new QComboBox;
  combo->setEditable(true);
  combo->setInsertPolicy(QComboBox::NoInsert);
  combo->completer()->setCompletionMode(QCompleter::PopupCompletion);
  combo->completer()->setFilterMode(Qt::MatchContains);
  return combo;
}

/// Rows of the block no planting has yet; replants share rows and do not count.
RowSet rowsFree(const Orchard& orchard, BlockId block) {
  RowSet rows = orchard.blocks.at(block).rows;
  for (const Planting* planting : plantingsOf(orchard, block))
    if (planting->kind != PlantingKind::replant) rows = rows.without(planting->rows);
  return rows;
}

QString textOf(std::optional<int> count) {
  return count ? QString::number(*count) : QString{};
}

constexpr int vigourFromTables = -1;

}  // namespace

PlantingForm::PlantingForm(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::head, true))
    , form_(new Form)
    , cultivar_(nameCombo())
    , rootstock_(nameCombo())
    , kind_(new QComboBox)
    , planted_(dayField())
    , rows_(new QLineEdit)
    , treeSpacing_(new QLineEdit)
    , treesPerRow_(new QLineEdit)
    , trees_(new QLineEdit)
    , vigour_(new QComboBox)
    , vigourReason_(new QLineEdit)
    , programme_(new QComboBox)
    , code_(new QLineEdit)
    , save_(new QPushButton(tr("&Save planting"))) {
  setObjectName(QStringLiteral("plantingForm"));
  addFields();
  save_->setProperty("main", true);
  save_->setObjectName(QStringLiteral("savePlanting"));
  auto* leave = new QPushButton{tr("&Close without saving")};
  leave->setObjectName(QStringLiteral("leavePlanting"));
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(save_);
  buttons->addWidget(leave);
  buttons->addStretch();
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 12, 16, 16);
  lines->setSpacing(8);
  lines->addWidget(title_);
  lines->addWidget(form_);
  lines->addLayout(buttons);
  lines->addStretch();
  connect(form_, &Form::edited, this, &PlantingForm::check);
  connect(save_, &QPushButton::clicked, this, &PlantingForm::save);
  connect(leave, &QPushButton::clicked, this, &PlantingForm::left);
  for (QLineEdit* field :
       {rows_, treeSpacing_, treesPerRow_, trees_, vigourReason_, code_})
    connect(field, &QLineEdit::returnPressed, this, &PlantingForm::save);
}

void PlantingForm::addFields() {
  form_->add(QStringLiteral("cultivar"), tr("C&ultivar"), cultivar_);
  form_->add(QStringLiteral("rootstock"), tr("Root&stock"), rootstock_);
  form_->add(QStringLiteral("planted"), tr("&Planted on, or planned for"), planted_);
  form_->add(QStringLiteral("rows"), tr("&Rows"), rows_);
  form_->add(QStringLiteral("treeSpacing"), tr("Between &trees"), treeSpacing_);
  form_->add(QStringLiteral("kind"), tr("&Kind"), kind_);
  form_->add(QStringLiteral("treesPerRow"),
             tr("Trees in a ro&w"),
             treesPerRow_,
             tr("May stay empty: row length over tree spacing"));
  form_->add(QStringLiteral("trees"),
             tr("Trees in &all"),
             trees_,
             tr("Where you have counted them"));
  form_->add(QStringLiteral("vigour"), tr("&Vigour"), vigour_);
  form_->add(QStringLiteral("vigourReason"),
             tr("Why &not as the tables say"),
             vigourReason_,
             tr("Such as shoots over 40 cm two winters running"));
  form_->add(QStringLiteral("programme"), tr("Pro&gramme"), programme_);
  form_->add(QStringLiteral("code"),
             tr("S&hort name"),
             code_,
             tr("For lists and the command line; made for you where empty"));
}

void PlantingForm::fillChoices() {
  const TradeTables& tables = session_->tables();
  cultivar_->clear();
  for (const Cultivar& cultivar : tables.cultivars)
    cultivar_->addItem(QString::fromStdString(cultivar.name));
  rootstock_->clear();
  for (const Rootstock& rootstock : tables.rootstocks)
    rootstock_->addItem(QString::fromStdString(rootstock.name));
  kind_->clear();
  for (const auto kind :
       {PlantingKind::main, PlantingKind::pollinizer, PlantingKind::replant})
    kind_->addItem(nameOf(kind), static_cast<int>(kind));
  vigour_->clear();
  vigour_->addItem(tr("as the tables say"), vigourFromTables);
  for (const auto vigour : {Vigour::weak, Vigour::moderate, Vigour::strong})
    vigour_->addItem(nameOf(vigour), static_cast<int>(vigour));
  programme_->clear();
  for (const auto& [id, programme] : session_->programmes())
    programme_->addItem(say(programme.name), QString::fromStdString(id));
}

void PlantingForm::startNew(BlockId block) {
  const Orchard& orchard = session_->orchard();
  Planting planting;
  planting.id = session_->ids().next<PlantingId>();
  planting.block = block;
  planting.planted = session_->today();
  planting.rows = rowsFree(orchard, block);
  planting.programme = usualProgramme(session_->programmes());
  isNew_ = true;
  title_->setText(tr("A new planting in %1")
                      .arg(QString::fromStdString(orchard.blocks.at(block).name)));
  fill(planting);
}

void PlantingForm::startEdit(PlantingId planting) {
  isNew_ = false;
  const Planting& stands = session_->orchard().plantings.at(planting);
  title_->setText(tr("Edit %1").arg(stockText(stands)));
  fill(stands);
}

bool PlantingForm::isAbout(const Orchard& orchard) const {
  return orchard.blocks.contains(start_.block)
         && (isNew_ || orchard.plantings.contains(start_.id));
}

void PlantingForm::fill(const Planting& planting) {
  const QSignalBlocker quiet{form_};
  start_ = planting;
  fillChoices();
  const UnitSystem units = session_->orchard().settings.units;
  const bool spaced = planting.treeSpacing > Length{};
  cultivar_->setCurrentText(QString::fromStdString(planting.cultivar));
  rootstock_->setCurrentText(QString::fromStdString(planting.rootstock));
  kind_->setCurrentIndex(kind_->findData(static_cast<int>(planting.kind)));
  planted_->setDate(dateOf(planting.planted));
  rows_->setText(QString::fromStdString(rowsText(planting.rows)));
  treeSpacing_->setText(
      spaced ? QString::fromStdString(lengthText(planting.treeSpacing, units))
             : QString{});
  treesPerRow_->setText(textOf(planting.treesPerRow));
  trees_->setText(textOf(planting.trees));
  vigour_->setCurrentIndex(vigour_->findData(
      planting.vigour ? static_cast<int>(*planting.vigour) : vigourFromTables));
  vigourReason_->setText(QString::fromStdString(planting.vigourReason));
  programme_->setCurrentIndex(
      programme_->findData(QString::fromStdString(planting.programme)));
  code_->setText(QString::fromStdString(planting.code));
  form_->forgetTouches();
  sayWhatFollows(planting);
  cultivar_->setFocus(Qt::OtherFocusReason);
}

Planting PlantingForm::read(FieldReader& fields) const {
  Planting planting = start_;
  planting.cultivar = fields.text(cultivar_->currentText());
  planting.rootstock = fields.text(rootstock_->currentText());
  planting.kind = static_cast<PlantingKind>(kind_->currentData().toInt());
  planting.planted = dayOf(planted_->date());
  planting.rows = fields.rows("rows", rows_->text());
  planting.treeSpacing =
      fields.length("treeSpacing", treeSpacing_->text(), start_.treeSpacing);
  planting.treesPerRow = fields.countIfAny("treesPerRow", treesPerRow_->text());
  planting.trees = fields.countIfAny("trees", trees_->text());
  const int vigour = vigour_->currentData().toInt();
  planting.vigour.reset();
  if (vigour != vigourFromTables) planting.vigour = static_cast<Vigour>(vigour);
  planting.vigourReason = planting.vigour ? fields.text(vigourReason_->text()) : "";
  planting.programme = programme_->currentData().toString().toStdString();
  planting.code = fields.text(code_->text());
  if (planting.code.empty())
    planting.code = freshCode(session_->orchard(),
                              blockOf(session_->orchard(), planting).name,
                              planting.cultivar);
  return planting;
}

Checked<Change> PlantingForm::deed(Planting& planting) const {
  FieldReader fields{session_->orchard().settings.units};
  planting = read(fields);
  const Orchard& orchard = session_->orchard();
  Checked<Change> change = isNew_ ? addPlanting(orchard, session_->tables(), planting)
                                  : editPlanting(orchard, session_->tables(), planting);
  if (fields.problems().empty()) return change;
  return tl::unexpected{
      firstOfEach(fields.problems(), change ? Problems{} : change.error())};
}

void PlantingForm::sayWhatFollows(const Planting& planting) {
  vigourReason_->setEnabled(planting.vigour.has_value());
  const bool named = !planting.cultivar.empty() && !planting.rootstock.empty();
  form_->setHint(QStringLiteral("vigour"),
                 named ? vigourText(*session_, planting) : QString{});
  const Block& block = blockOf(session_->orchard(), planting);
  form_->setHint(
      QStringLiteral("treeSpacing"),
      densityText(
          session_->orchard().settings.units, block.rowSpacing, planting.treeSpacing));
  const int trees = treesIn(session_->orchard(), planting);
  form_->setHint(QStringLiteral("rows"),
                 trees > 0 ? sayCounted(
                     trees, phrase("Blocks", "%1 tree"), phrase("Blocks", "%1 trees"))
                           : QString{});
  form_->setHint(QStringLiteral("planted"), ageText(*session_, planting));
}

void PlantingForm::check() {
  Planting planting;
  const Checked<Change> change = deed(planting);
  sayWhatFollows(planting);
  form_->showTouched(change ? Problems{} : change.error());
}

void PlantingForm::save() {
  Planting planting;
  const Problems problems = session_->perform(deed(planting));
  if (problems.empty()) {
    Q_EMIT saved(planting.id);
  } else {
    form_->showAll(problems);
  }
}

}  // namespace topwire
