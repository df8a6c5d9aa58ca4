#include "ui/panels/table_copy.h"

#include <QMimeData>

namespace ribwright {

namespace {

// A cell is quoted only where it has to be: 3' 4" stays as people read it.
QString tabbedCell(const QString& cell) {
  const bool plain = !cell.startsWith(QLatin1Char('"')) && !cell.contains(QLatin1Char('\t')) &&
                     !cell.contains(QLatin1Char('\n')) && !cell.contains(QLatin1Char('\r'));
  if (plain) return cell;
  return QLatin1Char('"') + QString(cell).replace(QLatin1Char('"'), QStringLiteral("\"\"")) + QLatin1Char('"');
}

QString tabbed(const QStringList& cells) {
  QStringList all;
  for (const QString& cell : cells) all << tabbedCell(cell);
  return all.join(QLatin1Char('\t')) + QLatin1Char('\n');
}

QString htmlRow(const QStringList& cells, const QString& tag) {
  QString row = QStringLiteral("<tr>");
  for (const QString& cell : cells)
    row += QStringLiteral("<%1>%2</%1>").arg(tag, cell.toHtmlEscaped().replace(QLatin1Char('\n'), "<br>"));
  return row + QStringLiteral("</tr>");
}

// Reads one cell from `at` on, which is moved behind it.
QString cellAt(const QString& text, qsizetype& at) {
  QString cell;
  const bool quoted = at < text.size() && text[at] == QLatin1Char('"') && text.indexOf(QLatin1Char('"'), at + 1) > 0;
  if (!quoted) {
    while (at < text.size() && text[at] != QLatin1Char('\t') && text[at] != QLatin1Char('\n')) cell += text[at++];
    return cell;
  }
  for (++at; at < text.size(); ++at) {
    if (text[at] == QLatin1Char('"')) {
      ++at;
      if (at >= text.size() || text[at] != QLatin1Char('"')) break;
    }
    cell += text[at];
  }
  return cell;
}

}  // namespace

QMimeData* copiedRows(const QStringList& titles, const std::vector<QStringList>& rows) {
  QString text = tabbed(titles);
  QString html = QStringLiteral("<meta charset=\"utf-8\"><table>") + htmlRow(titles, QStringLiteral("th"));
  for (const QStringList& row : rows) {
    text += tabbed(row);
    html += htmlRow(row, QStringLiteral("td"));
  }
  auto* copied = new QMimeData;
  copied->setText(text);
  copied->setHtml(html + QStringLiteral("</table>"));
  return copied;
}

std::vector<QStringList> pastedCells(const QString& pasted) {
  QString text = pasted;
  text.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(QLatin1Char('\r'), QLatin1Char('\n'));
  while (text.endsWith(QLatin1Char('\n'))) text.chop(1);
  std::vector<QStringList> rows(1);
  for (qsizetype at = 0; at <= text.size();) {
    rows.back() << cellAt(text, at).trimmed();
    if (at < text.size() && text[at] == QLatin1Char('\n')) rows.emplace_back();
    ++at;
  }
  return rows;
}

}  // namespace ribwright
