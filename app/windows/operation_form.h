#pragma once

#include "app/windows/form.h"
#include "app/windows/operation_editors.h"

#include <array>

namespace topwire {

/// One operation of an own programme, field by field. It says what was typed; what that
/// means for the programme's text is worked out by whoever holds the text.
class OperationForm : public QWidget {
  Q_OBJECT

public:
  explicit OperationForm(QWidget* parent = nullptr);

  /// The programme lends the names of other work.
  void fill(const Operation& operation, const Programme& programme);
  /// What is typed, and what of it can't be read, each with its field.
  Operation operation() const;
  Problems unreadable() const;

  void showFaults(const Problems& problems) { form_->showTouched(problems); }

  void showAllFaults(const Problems& problems) { form_->showAll(problems); }

Q_SIGNALS:
  void edited();

private:
  void addWords(const char* place,
                const QString& label,
                WordsField* field,
                const QString& hint = {});
  void addWhen();
  void addWho();
  void addHow();
  void checkWords(Problems& problems) const;
  void readRepeat(Operation& operation, Problems& problems) const;
  void readSeconds(Operation& operation, Problems& problems) const;
  Operation read(Problems& problems) const;

  Operation start_;
  Form* form_;
  std::vector<std::pair<const char*, const WordsField*>> words_;  ///< with their places
  WordsField* name_;
  WordsField* shortName_;
  AnchorField* opens_;
  AnchorField* closes_;
  AnchorField* cutOff_;
  WordsField* cutOffReason_;
  QLineEdit* leaves_;
  QLineEdit* repeat_;
  ChoicesField* vigours_;
  ChoicesField* kinds_;
  QLineEdit* seconds_;
  QLineEdit* needs_;
  std::array<WordsField*, 3> how_;
  WordsField* doneWhen_;
  WordsField* tools_;
  ChoicesField* avoid_;
  QCheckBox* cuts_;
  QLineEdit* skill_;
  WordsField* caution_;
  QComboBox* delay_;
  WordsField* delayReason_;
  QLineEdit* source_;
};

}  // namespace topwire
