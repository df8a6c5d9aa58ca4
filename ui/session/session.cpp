#include "ui/session/session.h"

#include <QDir>
#include <algorithm>

#include "core/drawing/elevation.h"
#include "core/job/job_file.h"

namespace ribwright {

Session::Session(QObject* parent) : QObject(parent) {}

bool Session::open(const QString& path) {
  // Read into a job of its own first: what is open is only let go for one that can be read.
  Outcome<Job> read = loadJob(QDir::toNativeSeparators(path).toStdString());
  faults_ = read ? std::vector<Fault>{} : read.faults();
  if (read) {
    const bool same = isOpen() && path == path_;
    const std::string letter = wall_ >= 0 ? job().walls[static_cast<std::size_t>(wall_)].letter : std::string();
    if (!same) paper_ = customaryPaper(read.value().units);
    Opened opened{std::move(read).value(), {}, {}};
    opened.plan = same ? ribwright::plan(opened.job, plan()) : ribwright::plan(opened.job);
    opened_ = std::move(opened);
    path_ = path;
    const auto& walls = job().walls;
    const auto kept =
        std::find_if(walls.begin(), walls.end(), [&](const Wall& wall) { return same && wall.letter == letter; });
    wall_ = walls.empty() ? -1 : kept == walls.end() ? 0 : static_cast<int>(kept - walls.begin());
    draw();
    emit jobChanged();
    emit wallChanged();
    emit pagesChanged();
  }
  emit faultsChanged();
  return faults_.empty();
}

bool Session::reload() { return !path_.isEmpty() && open(path_); }

void Session::draw() { opened_->pages = elevationPages(opened_->job, opened_->plan, paper_); }

void Session::chooseWall(int wall) {
  if (!isOpen() || wall < 0 || wall >= static_cast<int>(job().walls.size()) || wall == wall_) return;
  wall_ = wall;
  emit wallChanged();
  emit pagesChanged();
}

void Session::chooseWall(const std::string& letter) {
  if (!isOpen()) return;
  for (std::size_t i = 0; i < job().walls.size(); ++i) {
    if (job().walls[i].letter == letter) return chooseWall(static_cast<int>(i));
  }
}

void Session::choosePaper(PaperSize paper) {
  if (paper == paper_) return;
  paper_ = paper;
  if (isOpen()) draw();
  emit pagesChanged();
}

std::vector<Page> Session::pages() const {
  std::vector<Page> pages;
  if (!isOpen() || wall_ < 0) return pages;
  const std::string& letter = job().walls[static_cast<std::size_t>(wall_)].letter;
  std::copy_if(opened_->pages.begin(), opened_->pages.end(), std::back_inserter(pages),
               [&](const Page& page) { return page.wall == letter; });
  return pages;
}

}  // namespace ribwright
