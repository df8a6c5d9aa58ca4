// Asks for a printer and prints the pages of the open job.
#pragma once

#include <QPrinter>
#include <QWidget>

#include "ui/printing/print_pages.h"
#include "ui/session/session.h"

namespace ribwright {

// The elevations of all walls on the session's paper; the pages of the chosen wall are offered as the range.
void askAndPrint(const Session& session, QWidget* parent);

// What to tell a person of it; empty when there is nothing to tell.
QString wordsOf(Printed printed, const Session& session);

// Numbers, from 1, of the first and the last page of a wall among all pages; 0 and 0 when it has none.
std::pair<int, int> pagesOfWall(const std::vector<Page>& pages, const std::string& wall);

}  // namespace ribwright
