#include "app/windows/block_form.h"

#include "app/look/card.h"
#include "app/windows/field_reader.h"
#include "app/words/say.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace topwire {

namespace {

/// The figure as it is held, so that saving changes nothing else.
QString degreesText(std::optional<double> degrees) {
  return degrees ? QLocale::c().toString(*degrees, 'g', QLocale::FloatingPointShortest)
                 : QString{};
}

}  // namespace

BlockForm::BlockForm(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , title_(textLabel({}, TypeSize::head, true))
    , form_(new Form)
    , name_(new QLineEdit)
    , rows_(new QLineEdit)
    , rowSpacing_(new QLineEdit)
    , rowLength_(new QLineEdit)
    , elevation_(new QLineEdit)
    , minimumCorrection_(new QLineEdit)
    , maximumCorrection_(new QLineEdit)
    , workersAtMost_(new QLineEdit)
    , latitude_(new QLineEdit)
    , longitude_(new QLineEdit)
    , notes_(new QLineEdit)
    , save_(new QPushButton(tr("&Save block"))) {
  setObjectName(QStringLiteral("blockForm"));
  addFields();
  save_->setProperty("main", true);
  save_->setObjectName(QStringLiteral("saveBlock"));
  auto* leave = new QPushButton{tr("&Close without saving")};
  leave->setObjectName(QStringLiteral("leaveBlock"));

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
  connect(form_, &Form::edited, this, &BlockForm::check);
  connect(save_, &QPushButton::clicked, this, &BlockForm::save);
  connect(leave, &QPushButton::clicked, this, &BlockForm::left);
  for (QLineEdit* field : findChildren<QLineEdit*>())
    connect(field, &QLineEdit::returnPressed, this, &BlockForm::save);
}

void BlockForm::addFields() {
  form_->add(
      QStringLiteral("name"), tr("&Name"), name_, tr("As it is called in the field"));
  form_->add(QStringLiteral("rows"),
             tr("&Rows"),
             rows_,
             tr("As you number them: 1-24, or 1-12, 15"));
  form_->add(QStringLiteral("rowSpacing"), tr("Between r&ows"), rowSpacing_);
  form_->add(QStringLiteral("rowLength"),
             tr("&Length of a row"),
             rowLength_,
             tr("May stay empty where you count the trees"));
  form_->add(QStringLiteral("minimumCorrection"),
             tr("Correct the &minimum by"),
             minimumCorrection_);
  form_->add(QStringLiteral("maximumCorrection"),
             tr("Correct the ma&ximum by"),
             maximumCorrection_,
             tr("On top of what elevation makes of it"));
  form_->add(QStringLiteral("elevation"), tr("Ele&vation"), elevation_);
  form_->add(QStringLiteral("workersAtMost"),
             tr("&Workers at a time"),
             workersAtMost_,
             tr("At most; one a row where empty"));
  form_->add(QStringLiteral("latitude"),
             tr("L&atitude, degrees"),
             latitude_,
             tr("With the longitude, for the way between blocks"));
  form_->add(QStringLiteral("longitude"),
             tr("Lon&gitude, degrees"),
             longitude_,
             tr("Negative west of Greenwich"));
  form_->add(QStringLiteral("notes"), tr("No&tes"), notes_);
}

void BlockForm::startNew() {
  Block block;
  block.id = session_->ids().next<BlockId>();
  isNew_ = true;
  title_->setText(tr("A new block"));
  fill(block);
}

void BlockForm::startEdit(BlockId block) {
  isNew_ = false;
  const Block& stands = session_->orchard().blocks.at(block);
  title_->setText(tr("Edit %1").arg(QString::fromStdString(stands.name)));
  fill(stands);
}

bool BlockForm::isAbout(const Orchard& orchard) const {
  return isNew_ || orchard.blocks.contains(start_.id);
}

void BlockForm::fill(const Block& block) {
  const QSignalBlocker quiet{form_};
  start_ = block;
  const Settings& settings = session_->orchard().settings;
  const auto text = [&settings](std::optional<Length> length) {
    return length ? QString::fromStdString(lengthText(*length, settings.units))
                  : QString{};
  };
  const bool spaced = block.rowSpacing > Length{};
  name_->setText(QString::fromStdString(block.name));
  rows_->setText(QString::fromStdString(rowsText(block.rows)));
  rowSpacing_->setText(spaced ? text(block.rowSpacing) : QString{});
  rowLength_->setText(text(block.rowLength));
  elevation_->setText(text(block.elevation));
  minimumCorrection_->setText(correctionText(block.minimumCorrection, settings.units));
  maximumCorrection_->setText(correctionText(block.maximumCorrection, settings.units));
  workersAtMost_->setText(block.workersAtMost ? QString::number(*block.workersAtMost)
                                              : QString{});
  latitude_->setText(degreesText(block.latitude));
  longitude_->setText(degreesText(block.longitude));
  notes_->setText(QString::fromStdString(block.notes));
  form_->setHint(
      QStringLiteral("rowSpacing"),
      settings.units == UnitSystem::metric ? tr("Such as 3.6 m") : tr("Such as 11 ft"));
  form_->setHint(QStringLiteral("minimumCorrection"),
                 settings.units == UnitSystem::metric
                     ? tr("Against the station: -1.5 °C in a frost hollow")
                     : tr("Against the station: -3 °F in a frost hollow"));
  form_->setHint(QStringLiteral("elevation"),
                 tr("The orchard's, %1, where empty").arg(text(settings.elevation)));
  form_->forgetTouches();
  name_->setFocus(Qt::OtherFocusReason);
}

Checked<Change> BlockForm::deed(Block& block) const {
  FieldReader read{session_->orchard().settings.units};
  block = start_;
  block.name = read.text(name_->text());
  block.rows = read.rows("rows", rows_->text());
  block.rowSpacing = read.length("rowSpacing", rowSpacing_->text(), start_.rowSpacing);
  block.rowLength = read.lengthIfAny("rowLength", rowLength_->text(), start_.rowLength);
  block.elevation = read.lengthIfAny("elevation", elevation_->text(), start_.elevation);
  block.minimumCorrection = read.correction(
      "minimumCorrection", minimumCorrection_->text(), start_.minimumCorrection);
  block.maximumCorrection = read.correction(
      "maximumCorrection", maximumCorrection_->text(), start_.maximumCorrection);
  block.workersAtMost = read.countIfAny("workersAtMost", workersAtMost_->text());
  block.latitude = read.numberIfAny("latitude", latitude_->text());
  block.longitude = read.numberIfAny("longitude", longitude_->text());
  block.notes = read.text(notes_->text());
  Checked<Change> change = isNew_ ? addBlock(session_->orchard(), block)
                                  : editBlock(session_->orchard(), block);
  if (read.problems().empty()) return change;
  return tl::unexpected{
      firstOfEach(read.problems(), change ? Problems{} : change.error())};
}

void BlockForm::check() {
  Block block;
  const Checked<Change> change = deed(block);
  form_->showTouched(change ? Problems{} : change.error());
}

void BlockForm::save() {
  Block block;
  const Problems problems = session_->perform(deed(block));
  if (problems.empty()) {
    Q_EMIT saved(block.id, isNew_);
  } else {
    form_->showAll(problems);
  }
}

}  // namespace topwire
