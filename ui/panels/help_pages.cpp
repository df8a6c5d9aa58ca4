#include "ui/panels/help_pages.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "ui/tools/tool_kind.h"

namespace ribwright {

namespace {

struct HelpPagesTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::HelpPages)
};

constexpr int helpLetters = 76, helpLines = 34;

QString plain(const QString& words) { return QString(words).remove(QLatin1Char('&')).toHtmlEscaped(); }

QString row(const QString& key, const QString& does) {
  return QStringLiteral("<tr><td style='white-space:nowrap'><b>%1</b>&nbsp;&nbsp;</td><td>%2</td></tr>")
      .arg(key.toHtmlEscaped(), does);
}

QString table(const QString& title, const QString& rows) {
  return QStringLiteral("<h3>%1</h3><table cellspacing='0' cellpadding='2'>%2</table>").arg(title, rows);
}

QString toolRows() {
  QString rows;
  for (const ToolWords& tool : toolWords())
    rows +=
        row(tool.key.toString(QKeySequence::NativeText), plain(tool.title) + QStringLiteral(": ") + plain(tool.does));
  return rows;
}

QString handRows() {
  return row(HelpPagesTexts::tr("digits, ="),
             HelpPagesTexts::tr("while drawing or dragging: type the length, or 4' x 3'; = for a place")) +
         row(HelpPagesTexts::tr("Ctrl"), HelpPagesTexts::tr("held while dragging: does not snap")) +
         row(HelpPagesTexts::tr("arrows"),
             HelpPagesTexts::tr("move what is chosen by 1 in or 10 mm; with Shift 1 ft or 100 mm, with Alt a "
                                "mark of the tape; with nothing chosen, the view")) +
         row(HelpPagesTexts::tr("Shift and drag"), HelpPagesTexts::tr("choose all openings in a frame")) +
         row(HelpPagesTexts::tr("Ctrl and click"), HelpPagesTexts::tr("choose one more, or one less")) +
         row(HelpPagesTexts::tr("Tab"),
             HelpPagesTexts::tr("the next sheet in hanging order; Ctrl+Tab leaves the board")) +
         row(HelpPagesTexts::tr("Page Up, Page Down"), HelpPagesTexts::tr("the wall before, the next wall")) +
         row(HelpPagesTexts::tr("Shift+F10"), HelpPagesTexts::tr("what can be done with what is chosen")) +
         row(HelpPagesTexts::tr("+ - 0"), HelpPagesTexts::tr("nearer, farther, the whole wall")) +
         row(HelpPagesTexts::tr("Esc"), HelpPagesTexts::tr("one step back"));
}

}  // namespace

QString quickStartText() {
  const QStringList steps{
      HelpPagesTexts::tr(
          "<b>New job</b> (Ctrl+N): type the sizes as the plans have them. Every field has something sensible in it; "
          "the picture beside shows what it makes."),
      HelpPagesTexts::tr(
          "<b>Openings</b>: take the tool (W for a window, D for a walk door), drag it on the wall, or click a corner "
          "and type <i>4' x 3'</i>. Right click repeats it in each bay or mirrors it to the wall across."),
      HelpPagesTexts::tr(
          "<b>Where it is seen from</b>: drag the eye in the plan; the sheets are hung so that their laps do not "
          "show from there."),
      HelpPagesTexts::tr(
          "<b>Starts compared</b>, below: how each wall's first sheet can stand, and what each costs. Point to "
          "one to see it."),
      HelpPagesTexts::tr(
          "<b>Findings</b>, at the right: what would be wrong if built as shown. Choose one to go there; where a "
          "button mends it, it stands under its words."),
      HelpPagesTexts::tr(
          "<b>Pages</b> shows what is printed; <b>Save packet</b> (Ctrl+Shift+P) writes it with the order as tables."),
      HelpPagesTexts::tr(
          "Everything can be taken back (Ctrl+Z), and work that is not saved is kept if the program ends."),
  };
  QString items;
  for (const QString& step : steps) items += QStringLiteral("<li style='margin-bottom:6px'>%1</li>").arg(step);
  return QStringLiteral("<h2>%1</h2><ol>%2</ol><p>%3</p>")
      .arg(HelpPagesTexts::tr("From the plans to the wall"), items,
           HelpPagesTexts::tr(
               "Screws and holes stand where the plans put the steel. Nothing is drilled before the steel is "
               "measured; the plans and the local code go before what is shown here."));
}

QString keysText(const std::vector<QAction*>& actions) {
  QString rows;
  for (const QAction* action : actions) {
    if (!action->shortcut().isEmpty())
      rows += row(action->shortcut().toString(QKeySequence::NativeText), plain(action->text()));
  }
  return table(HelpPagesTexts::tr("On the wall: tools"), toolRows()) +
         table(HelpPagesTexts::tr("On the wall: hand and keys"), handRows()) +
         table(HelpPagesTexts::tr("Everywhere"), rows);
}

void showHelp(QWidget* window, const char* name, const QString& title, const QString& html) {
  auto* dialog = new QDialog(window);
  dialog->setObjectName(QLatin1String(name));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setWindowTitle(title);
  auto* words = new QTextBrowser(dialog);
  words->setObjectName(QLatin1String(name) + QStringLiteral("Words"));
  words->setAccessibleName(title);
  words->setHtml(html);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
  QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
  auto* layout = new QVBoxLayout(dialog);
  layout->addWidget(words);
  layout->addWidget(buttons);
  const QFontMetrics metrics = dialog->fontMetrics();
  dialog->resize(helpLetters * metrics.averageCharWidth(), helpLines * metrics.lineSpacing());
  dialog->show();
}

}  // namespace ribwright
