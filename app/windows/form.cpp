#include "app/windows/form.h"

#include "app/look/card.h"
#include "app/words/say.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QSpinBox>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr int columns = 2;

QWidget* fieldBox(QLabel* label, QWidget* editor, QLabel* message) {
  auto* box = new QWidget;
  auto* lines = new QVBoxLayout{box};
  lines->setContentsMargins(4, 4, 4, 4);
  lines->setSpacing(4);
  lines->addWidget(label);
  lines->addWidget(editor);
  lines->addWidget(message);
  lines->addStretch();
  return box;
}

}  // namespace

Form::Form(QWidget* parent)
    : QWidget(parent), grid_(new QGridLayout(this)), general_(textLabel({})) {
  general_->setObjectName(QStringLiteral("formProblem"));
  general_->setFont(fontOf(TypeSize::body, true));
  general_->setWordWrap(true);
  general_->setVisible(false);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(16);
  grid_->setVerticalSpacing(8);
  grid_->addWidget(general_, 0, 0, 1, columns);
  for (int column = 0; column < columns; ++column) grid_->setColumnStretch(column, 1);
}

void Form::add(const QString& place,
               const QString& label,
               QWidget* editor,
               const QString& hint) {
  put(place, label, editor, hint, 1);
}

void Form::addWide(const QString& place,
                   const QString& label,
                   QWidget* editor,
                   const QString& hint) {
  cells_ += cells_ % columns;
  put(place, label, editor, hint, columns);
}

void Form::put(const QString& place,
               const QString& label,
               QWidget* editor,
               const QString& hint,
               int width) {
  editor->setObjectName(QStringLiteral("field-") + place);
  auto* words = new QLabel{label};
  words->setBuddy(editor);
  QString plain = label;
  editor->setAccessibleName(plain.remove(QLatin1Char('&')));
  QLabel* message = mutedLabel(hint);
  message->setObjectName(QStringLiteral("message-") + place);
  message->setWordWrap(true);
  grid_->addWidget(
      fieldBox(words, editor, message), 1 + cells_ / columns, cells_ % columns, 1, width);
  cells_ += width;
  fields_.push_back({place, editor, message, hint});
  watch(editor, place);
}

void Form::watch(QWidget* editor, const QString& place) {
  const auto changed = [this, place] { touch(place); };
  if (auto* edit = qobject_cast<QLineEdit*>(editor))
    connect(edit, &QLineEdit::textChanged, this, changed);
  if (auto* combo = qobject_cast<QComboBox*>(editor))
    connect(combo, &QComboBox::currentTextChanged, this, changed);
  if (auto* date = qobject_cast<QDateEdit*>(editor))
    connect(date, &QDateEdit::dateChanged, this, changed);
  if (auto* number = qobject_cast<QSpinBox*>(editor))
    connect(number, &QSpinBox::valueChanged, this, changed);
  if (auto* box = qobject_cast<QCheckBox*>(editor))
    connect(box, &QCheckBox::toggled, this, changed);
  if (editor->focusProxy() == nullptr) return;
  for (QWidget* part : editor->findChildren<QWidget*>())
    if (part->parentWidget()->focusPolicy() == Qt::NoFocus) watch(part, place);
}

Form::Field* Form::find(const QString& place) {
  const auto found = std::ranges::find(fields_, place, &Field::place);
  return found == fields_.end() ? nullptr : &*found;
}

void Form::touch(const QString& place) {
  find(place)->touched = true;
  Q_EMIT edited();
}

void Form::put(Field& field, const QString& fault) {
  const bool faulty = !fault.isEmpty();
  field.message->setText(faulty ? fault : field.hint);
  field.message->setForegroundRole(faulty ? QPalette::WindowText
                                          : QPalette::PlaceholderText);
  field.message->setFont(fontOf(TypeSize::small, faulty));
  field.editor->setAccessibleDescription(field.message->text());
  if (field.editor->property("fault").toBool() == faulty) return;
  field.editor->setProperty("fault", faulty);
  field.editor->update();
}

void Form::show(const Problems& problems, bool onlyTouched) {
  QStringList general;
  for (Field& field : fields_) put(field, {});
  for (auto problem = problems.rbegin(); problem != problems.rend(); ++problem) {
    Field* field = find(QString::fromStdString(problem->place));
    if (field == nullptr)
      general.prepend(say(*problem));
    else if (field->touched || !onlyTouched)
      put(*field, say(problem->sentence));
  }
  general_->setText(general.join(QLatin1Char('\n')));
  general_->setVisible(!onlyTouched && !general.isEmpty());
}

void Form::showTouched(const Problems& problems) {
  show(problems, true);
}

void Form::showAll(const Problems& problems) {
  show(problems, false);
  const auto first = std::ranges::find_if(fields_, [](const Field& field) {
    return field.editor->property("fault").toBool();
  });
  if (first != fields_.end()) first->editor->setFocus(Qt::OtherFocusReason);
}

void Form::forgetTouches() {
  for (Field& field : fields_) field.touched = false;
  show({}, true);
}

void Form::setHint(const QString& place, const QString& hint) {
  Field* field = find(place);
  const bool faulty = field->editor->property("fault").toBool();
  field->hint = hint;
  if (!faulty) field->message->setText(hint);
}

}  // namespace topwire
