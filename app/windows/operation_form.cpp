#include "app/windows/operation_form.h"

#include "app/windows/block_words.h"
#include "app/windows/programme_words.h"
#include "app/words/say.h"
#include "core/programme/leaf_ranges.h"
#include "core/programme/operation_text.h"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr std::array vigourChoices{Vigour::weak, Vigour::moderate, Vigour::strong};
constexpr std::array kindChoices{
    PlantingKind::main, PlantingKind::pollinizer, PlantingKind::replant};
constexpr std::array avoidChoices{
    Avoid::wet, Avoid::frost, Avoid::heat, Avoid::wind, Avoid::spray};
constexpr std::array costChoices{
    DelayCost::low, DelayCost::medium, DelayCost::high, DelayCost::veryHigh};

template <class Choices>
QStringList namesOf(const Choices& choices) {
  QStringList names;
  for (const auto choice : choices) names << nameOf(choice);
  return names;
}

template <class Choices, class Set>
void fillChoices(ChoicesField& field, const Choices& choices, const Set& chosen) {
  for (std::size_t i = 0; i < choices.size(); ++i)
    field.setChosen(i, chosen.contains(choices.at(i)));
}

template <class Choices>
auto readChoices(const ChoicesField& field, const Choices& choices) {
  std::set<typename Choices::value_type> chosen;
  for (std::size_t i = 0; i < choices.size(); ++i)
    if (field.isChosen(i)) chosen.insert(choices.at(i));
  return chosen;
}

bool isEmpty(const Words& words) {
  return words.en.empty() && words.es.empty();
}

QStringList partsOf(const QString& text) {
  QStringList parts;
  for (const QString& part : text.split(QLatin1Char(',')))
    if (!part.trimmed().isEmpty()) parts << part.trimmed();
  return parts;
}

Words listed(const std::vector<Words>& words) {
  QStringList english;
  QStringList spanish;
  for (const Words& one : words) {
    english << QString::fromStdString(one.en);
    spanish << QString::fromStdString(one.es);
  }
  return {joinedWords(english).toStdString(), joinedWords(spanish).toStdString()};
}

std::vector<Words> unlisted(const Words& words) {
  const QStringList english = partsOf(QString::fromStdString(words.en));
  const QStringList spanish = partsOf(QString::fromStdString(words.es));
  std::vector<Words> all;
  for (qsizetype i = 0; i < qMax(english.size(), spanish.size()); ++i)
    all.push_back({english.value(i).toStdString(), spanish.value(i).toStdString()});
  return all;
}

/// As a programme's file has it: 2, 1-3, 4+.
QString leavesAsTyped(const Operation& operation) {
  for (const OperationField& field : fieldsOf(operation))
    if (field.key == "leaves" && field.value) {
      QString typed = QString::fromStdString(inlineToml(*field.value));
      return typed.remove(QLatin1Char('"')).remove(QLatin1Char('[')).remove(u']');
    }
  return {};
}

std::optional<std::vector<LeafRange>> readLeaves(const QString& typed) {
  std::vector<LeafRange> ranges;
  for (QString part : partsOf(typed)) {
    const bool open = part.endsWith(QLatin1Char('+'));
    if (open) part.chop(1);
    part.replace(QStringLiteral(" to "), QStringLiteral("~"));
    if (const auto hyphen = part.indexOf(QLatin1Char('-'), 1);
        hyphen > 0 && !part.contains(u'~'))
      part[hyphen] = u'~';
    const QStringList ends = part.split(u'~');
    const auto first = readLeaf(ends.value(0).toStdString());
    const auto last =
        open ? std::optional{LeafRange::open} : readLeaf(ends.constLast().toStdString());
    if (!first || !last || ends.size() > 2 || *first > *last) return std::nullopt;
    ranges.push_back({*first, *last});
  }
  return ranges;
}

Problem at(const char* place, Phrase phrase, const QString& typed) {
  return {Sentence{phrase, {typed.toStdString()}}, place, {}};
}

QString secondsAsTyped(const std::map<int, int>& byLeaf) {
  if (byLeaf.size() == 1 && byLeaf.begin()->first == 1)
    return QString::number(byLeaf.begin()->second);
  QStringList parts;
  for (const auto& [leaf, seconds] : byLeaf)
    parts << QStringLiteral("%1: %2").arg(leaf).arg(seconds);
  return joinedWords(parts);
}

QString repeatAsTyped(const std::optional<Repeat>& repeat) {
  if (!repeat) return {};
  const auto& days = repeat->everyDays;
  if (days[0] == days[1] && days[1] == days[2]) return QString::number(days[0]);
  return QStringLiteral("%1, %2, %3").arg(days[0]).arg(days[1]).arg(days[2]);
}

}  // namespace

OperationForm::OperationForm(QWidget* parent)
    : QWidget(parent)
    , form_(new Form)
    , name_(new WordsField)
    , shortName_(new WordsField)
    , opens_(new AnchorField(false))
    , closes_(new AnchorField(false))
    , cutOff_(new AnchorField(true))
    , cutOffReason_(new WordsField)
    , leaves_(new QLineEdit)
    , repeat_(new QLineEdit)
    , vigours_(new ChoicesField(namesOf(vigourChoices)))
    , kinds_(new ChoicesField(namesOf(kindChoices)))
    , seconds_(new QLineEdit)
    , needs_(new QLineEdit)
    , how_{new WordsField, new WordsField, new WordsField}
    , doneWhen_(new WordsField)
    , tools_(new WordsField)
    , avoid_(new ChoicesField(namesOf(avoidChoices)))
    , cuts_(new QCheckBox(tr("It cuts living wood")))
    , skill_(new QLineEdit)
    , caution_(new WordsField)
    , delay_(new QComboBox)
    , delayReason_(new WordsField)
    , source_(new QLineEdit) {
  setObjectName(QStringLiteral("operationForm"));
  for (const DelayCost cost : costChoices)
    delay_->addItem(nameOf(cost), static_cast<int>(cost));
  addWhen();
  addWho();
  addHow();
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 8, 16, 16);
  lines->addWidget(form_);
  lines->addStretch();
  connect(form_, &Form::edited, this, &OperationForm::edited);
}

void OperationForm::addWords(const char* place,
                             const QString& label,
                             WordsField* field,
                             const QString& hint) {
  form_->addWide(QLatin1String(place), label, field, hint);
  words_.emplace_back(place, field);
}

void OperationForm::addWhen() {
  const QString north =
      tr("A day of the year is the one in the north; south of the equator it is six "
         "months later");
  addWords("name", tr("Name"), name_);
  addWords("short",
           tr("Short name"),
           shortName_,
           tr("For a narrow bar; the name where empty"));
  form_->addWide(QStringLiteral("opens"), tr("Opens"), opens_, north);
  form_->addWide(QStringLiteral("closes"),
                 tr("Closes"),
                 closes_,
                 tr("Its last day; a figure below zero is that much earlier"));
  form_->addWide(QStringLiteral("cut-off"),
                 tr("No use after"),
                 cutOff_,
                 tr("Nothing, where late is better than never"));
  addWords("cut-off-reason", tr("Why no use after"), cutOffReason_);
}

void OperationForm::addWho() {
  form_->add(QStringLiteral("leaves"),
             tr("Leaves"),
             leaves_,
             tr("2, 1-3, 4+, -3 to -1, or several of them; empty: once per planting"));
  form_->add(QStringLiteral("repeat"),
             tr("Again every, days"),
             repeat_,
             tr("14, or for weak, moderate and strong trees: 28, 21, 14"));
  form_->addWide(QStringLiteral("vigour"), tr("On trees that are"), vigours_);
  form_->addWide(QStringLiteral("plantings"), tr("In plantings that are"), kinds_);
  form_->add(QStringLiteral("seconds-per-tree"),
             tr("Seconds per tree"),
             seconds_,
             tr("24, or from a leaf on: 1: 24, 3: 30; 0: not counted by the tree"));
  form_->add(QStringLiteral("needs"),
             tr("Needs first"),
             needs_,
             tr("Ids of work to be done before, such as raise-trellis"));
  form_->addWide(QStringLiteral("avoid"), tr("Not when it is"), avoid_);
  form_->add(QStringLiteral("cuts"), tr("Wounds"), cuts_);
  form_->add(QStringLiteral("skill"),
             tr("Skill it asks for"),
             skill_,
             tr("Such as pruning; empty: anyone can do it"));
  form_->add(QStringLiteral("if-late"), tr("Cost of delay"), delay_);
  addWords("if-late-reason", tr("Why delay costs"), delayReason_);
}

void OperationForm::addHow() {
  const std::array labels{tr("How, line 1"), tr("How, line 2"), tr("How, line 3")};
  const std::array places{"how", "how-2", "how-3"};
  for (std::size_t i = 0; i < how_.size(); ++i)
    addWords(places.at(i), labels.at(i), how_.at(i));
  addWords("done-when", tr("Done when"), doneWhen_);
  addWords("tools",
           tr("Tools"),
           tools_,
           tr("With commas between, in the same order in both languages"));
  addWords("caution", tr("Caution"), caution_);
  form_->addWide(QStringLiteral("source"),
                 tr("Source"),
                 source_,
                 tr("Where window and figures come from; your own trials count"));
}

void OperationForm::fill(const Operation& operation, const Programme& programme) {
  const QSignalBlocker quiet{form_};
  start_ = operation;
  name_->setWords(operation.name);
  shortName_->setWords(operation.shortName == operation.name ? Words{}
                                                             : operation.shortName);
  opens_->setAnchor(operation.opens, programme);
  closes_->setAnchor(operation.closes, programme);
  cutOff_->setAnchor(
      operation.cutOff ? std::optional{operation.cutOff->anchor} : std::nullopt,
      programme);
  cutOffReason_->setWords(operation.cutOff ? operation.cutOff->reason : Words{});
  leaves_->setText(leavesAsTyped(operation));
  repeat_->setText(repeatAsTyped(operation.repeat));
  fillChoices(*vigours_, vigourChoices, operation.vigours);
  fillChoices(*kinds_, kindChoices, operation.kinds);
  fillChoices(*avoid_, avoidChoices, operation.avoid);
  seconds_->setText(secondsAsTyped(operation.secondsPerTree));
  QStringList needs;
  for (const std::string& id : operation.needs) needs << QString::fromStdString(id);
  needs_->setText(joinedWords(needs));
  for (std::size_t i = 0; i < how_.size(); ++i)
    how_.at(i)->setWords(i < operation.how.size() ? operation.how[i] : Words{});
  doneWhen_->setWords(operation.doneWhen);
  tools_->setWords(listed(operation.tools));
  cuts_->setChecked(operation.cuts);
  skill_->setText(QString::fromStdString(operation.skill));
  caution_->setWords(operation.caution);
  delay_->setCurrentIndex(static_cast<int>(operation.delayCost));
  delayReason_->setWords(operation.delayReason);
  source_->setText(QString::fromStdString(operation.source));
  source_->setCursorPosition(0);
  form_->forgetTouches();
}

Operation OperationForm::operation() const {
  Problems problems;
  return read(problems);
}

Problems OperationForm::unreadable() const {
  Problems problems;
  read(problems);
  return problems;
}

Operation OperationForm::read(Problems& problems) const {
  checkWords(problems);
  Operation operation = start_;
  operation.name = name_->words();
  operation.shortName =
      isEmpty(shortName_->words()) ? operation.name : shortName_->words();
  operation.opens = opens_->anchor().value_or(start_.opens);
  operation.closes = closes_->anchor().value_or(start_.closes);
  operation.cutOff.reset();
  if (const auto cutOff = cutOff_->anchor())
    operation.cutOff = CutOff{*cutOff, cutOffReason_->words()};
  if (const auto leaves = readLeaves(leaves_->text()))
    operation.leaves = *leaves;
  else
    problems.push_back(at("leaves",
                          phrase("Form", "%1 names no leaves; write 2, 1-3 or 4+."),
                          leaves_->text()));
  operation.vigours = readChoices(*vigours_, vigourChoices);
  operation.kinds = readChoices(*kinds_, kindChoices);
  operation.avoid = readChoices(*avoid_, avoidChoices);
  readRepeat(operation, problems);
  readSeconds(operation, problems);
  operation.needs.clear();
  for (const QString& id : partsOf(needs_->text()))
    operation.needs.push_back(id.toStdString());
  operation.how.clear();
  for (const WordsField* line : how_)
    if (!isEmpty(line->words())) operation.how.push_back(line->words());
  operation.doneWhen = doneWhen_->words();
  // A comma inside a tool's name would part it, so a list left alone stays as it was.
  if (tools_->words() != listed(start_.tools))
    operation.tools = unlisted(tools_->words());
  operation.cuts = cuts_->isChecked();
  operation.skill = skill_->text().simplified().toLower().toStdString();
  operation.caution = caution_->words();
  operation.delayCost = costChoices.at(static_cast<std::size_t>(delay_->currentIndex()));
  operation.delayReason = delayReason_->words();
  operation.source = source_->text().trimmed().toStdString();
  return operation;
}

/// Sheets are printed in both languages, so words stand in both or in neither.
void OperationForm::checkWords(Problems& problems) const {
  for (const auto& [place, field] : words_) {
    const auto& [english, spanish] = field->words();
    if (english.empty() != spanish.empty())
      problems.push_back(
          {Sentence{phrase("Form",
                           "Sheets are printed in English and in Spanish, so fill in "
                           "both or neither.")},
           place,
           {}});
  }
  const auto [english, spanish] = tools_->words();
  if (tools_->words() == listed(start_.tools)) return;
  if (partsOf(QString::fromStdString(english)).size()
      != partsOf(QString::fromStdString(spanish)).size())
    problems.push_back(
        {Sentence{phrase("Form",
                         "One language names more tools than the other; name each in "
                         "both.")},
         "tools",
         {}});
}

void OperationForm::readRepeat(Operation& operation, Problems& problems) const {
  const QStringList parts = partsOf(repeat_->text());
  if (parts.isEmpty()) return operation.repeat.reset();
  Repeat repeat = start_.repeat.value_or(Repeat{});
  bool whole = parts.size() == 1 || parts.size() == 3;
  for (std::size_t i = 0; i < 3 && whole; ++i)
    repeat.everyDays.at(i) =
        parts.value(parts.size() == 1 ? 0 : static_cast<qsizetype>(i)).toInt(&whole);
  if (whole) {
    operation.repeat = repeat;
    return;
  }
  problems.push_back(at(
      "repeat",
      phrase("Form", "%1 is no count of days; write 14, or three of them: 28, 21, 14."),
      repeat_->text()));
}

void OperationForm::readSeconds(Operation& operation, Problems& problems) const {
  std::map<int, int> byLeaf;
  bool whole = true;
  for (const QString& part : partsOf(seconds_->text())) {
    const QStringList pair = part.split(QLatin1Char(':'));
    bool number = false;
    const int seconds = pair.constLast().trimmed().toInt(&number);
    const auto leaf =
        pair.size() == 1 ? std::optional{1} : readLeaf(pair.constFirst().toStdString());
    whole = whole && number && leaf && pair.size() <= 2;
    if (whole) byLeaf[*leaf] = seconds;
  }
  if (whole && !byLeaf.empty()) {
    operation.secondsPerTree = std::move(byLeaf);
    return;
  }
  problems.push_back(
      at("seconds-per-tree",
         phrase("Form", "%1 is no count of seconds; write 24, or 1: 24, 3: 30."),
         seconds_->text()));
}

}  // namespace topwire
