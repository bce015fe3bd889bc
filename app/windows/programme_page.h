#pragma once

#include "app/models/programme_draft.h"
#include "app/models/session.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QWidget>

#include <optional>

namespace topwire {

class EffectPanel;
class OperationForm;
class OperationView;
class PageHead;
class ProgrammeCopyPanel;
class ProgrammeFaultsPanel;
class ProgrammePlantingsPanel;
class Questions;
class TwoLineList;

/// The programmes and their operations: shipped ones to read, the orchard's own to
/// change, with what a change would do to the plan before it is kept.
///
/// What is being changed is a draft; it goes when its programme changes under it. While
/// there is one the other programmes wait, and while a field is amiss the other work
/// does, so that nothing typed is lost by a step aside.
class ProgrammePage : public QWidget {
  Q_OBJECT

public:
  ProgrammePage(Session& session, Questions& questions, QWidget* parent = nullptr);

private:
  void makeHead();
  QWidget* makeSide();
  QWidget* makeEditor();
  void listen();

  void refresh();
  void followRecord();
  void fillProgrammes();
  void fillOperations();
  void chooseOperation();
  void showChosen();
  void showButtons();
  /// The draft's where there is one; nothing where none is chosen.
  const Programme* programme() const;
  const Operation* operation() const;
  std::string programmeId() const;

  Problems takeTyped();
  void followTyping();
  void showEffect();
  void keep();
  void leave();
  void copyOperation();
  void removeOperation();

  void copyProgramme();
  void choosePlantings();
  void saveAsFile();
  void bringIn();
  void removeProgramme();
  void backToOperation();
  std::optional<std::string> textOf(const std::string& id) const;

  Session* session_;
  Questions* questions_;
  PageHead* head_;
  TwoLineList* programmes_;
  TwoLineList* operations_;
  QStackedWidget* stack_;
  QWidget* viewArea_;
  OperationView* view_;
  QWidget* editor_;
  OperationForm* form_;
  EffectPanel* effect_;
  ProgrammeCopyPanel* copyPanel_;
  ProgrammePlantingsPanel* plantingsPanel_;
  ProgrammeFaultsPanel* faultsPanel_;
  QPushButton* copy_;
  QPushButton* choose_;
  QPushButton* save_;
  QPushButton* bring_;
  QPushButton* remove_;
  QPushButton* copyOperation_;
  QPushButton* removeOperation_;
  std::optional<ProgrammeDraft> draft_;
  bool typed_ = false;  ///< and not taken into the draft yet
  QTimer later_;
};

}  // namespace topwire
