#include "ui/tools/tool_actions.h"

#include <QActionGroup>

#include "ui/tools/board_tools.h"

namespace ribwright {

std::vector<QAction*> toolActions(BoardTools* tools) {
  auto* group = new QActionGroup(tools);
  std::vector<QAction*> actions;
  for (const ToolWords& tool : toolWords()) {
    // Its key is told beside it, and is the board's own: letters are no shortcuts of the window.
    auto* action = new QAction(tool.title + QLatin1Char('\t') + tool.key.toString(QKeySequence::NativeText), group);
    action->setIconText(QString(tool.title).remove(QLatin1Char('&')));
    action->setObjectName(QLatin1String(tool.name));
    action->setCheckable(true);
    action->setToolTip(QStringLiteral("%1 (%2)").arg(tool.does, tool.key.toString(QKeySequence::NativeText)));
    action->setStatusTip(tool.does);
    const ToolKind kind = tool.kind;
    QObject::connect(action, &QAction::triggered, tools, [tools, kind] { tools->take(kind); });
    QObject::connect(tools, &BoardTools::toolChanged, action,
                     [tools, kind, action] { action->setChecked(tools->tool() == kind); });
    action->setChecked(tools->tool() == kind);
    actions.push_back(action);
  }
  return actions;
}

}  // namespace ribwright
