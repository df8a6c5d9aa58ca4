// The tables and panels round the wall: made after the window has shown its first frame, put into its docks.
#pragma once

#include <functional>
#include <vector>

#include "ui/session/session.h"
#include "ui/session/window_docks.h"

class QTabWidget;

namespace ribwright {

class BatchPanel;
class FindingPanel;
class OrderTabs;
class ParticularsPanel;
class PartTable;
class SharingPanel;
class StartPanel;
class StatedPanel;
class SurveyPanel;
class TrimPanel;

struct WindowPanels {
  QTabWidget* tables = nullptr;
  PartTable* sheets = nullptr;
  StatedPanel *openings = nullptr, *penetrations = nullptr, *girts = nullptr, *bands = nullptr;
  SurveyPanel* survey = nullptr;
  BatchPanel* batches = nullptr;
  StartPanel* starts = nullptr;
  OrderTabs* order = nullptr;
  SharingPanel* sharing = nullptr;
  TrimPanel* trim = nullptr;
  ParticularsPanel* particulars = nullptr;
  FindingPanel* findings = nullptr;

  std::vector<QWidget*> all() const;
  // Tables that are typed into.
  std::vector<StatedPanel*> stated() const;
  // What is being typed is entered.
  void finishTyping() const;
  bool areMade() const { return tables != nullptr; }
  // The chosen wall's rows, and how many there are.
  void showWall() const;
  // The table that a part stands in comes to the front.
  void showTableOf(const Part& part) const;
};

// `pointedAt`: a part was chosen in one of them, to be brought into view.
WindowPanels makePanels(Session& session, const WindowDocks& docks, const std::function<void(const Part&)>& pointedAt);

}  // namespace ribwright
