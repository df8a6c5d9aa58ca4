#include "ui/session/session.h"

#include "core/drawing/packet_pages.h"
#include "core/drawing/particulars.h"

namespace ribwright {

Session::Session(QObject* parent) : QObject(parent) {}

bool Session::open(const QString& path) {
  // Read into a job of its own first: what is open is only let go for one that can be read.
  const bool same = isOpen() && path == file_.path();
  const Outcome<Job> read = file_.read(path);
  faults_ = read ? std::vector<Fault>{} : read.faults();
  if (read) {
    if (!same) paper_ = customaryPaper(read.value().units);
    show(History(read.value()), same ? plan() : Plan{}, same);
  }
  emit faultsChanged();
  return faults_.empty();
}

bool Session::reload() { return isOpen() && open(QString(path())); }

void Session::show(History history, const Plan& previous, bool sameFile) {
  auto job = std::make_shared<const Job>(history.job());
  auto planned = std::make_shared<const Plan>(ribwright::plan(*job, previous));
  const std::string letter = sameFile && wall_ >= 0 ? chosenWall().letter : std::string();
  if (!sameFile) chosen_.reset();
  batchChanges_ = sameFile ? ribwright::batchChanges(previous, *planned) : BatchChanges{};
  opened_ = Opened{std::move(history), std::move(job), std::move(planned)};
  findingParts_.clear();
  for (const Finding& finding : plan().findings) findingParts_.push_back(partOf(this->job(), plan(), finding));
  keepChosen(letter);
  pages_.reset();
  if (!sameFile) emit jobOpened();
  emit jobChanged();
  emit historyChanged();
  emit wallChanged();
  emit chosenChanged();
  emit pagesChanged();
}

void Session::keepChosen(const std::string& letter) {
  const int first = job().walls.empty() ? -1 : 0;
  const auto kept = wallIndex(job(), letter);
  wall_ = kept ? static_cast<int>(*kept) : first;
  if (chosen_ && !isThere(*chosen_)) chosen_.reset();
}

bool Session::isThere(const Part& part) const {
  return isOpen() && !particularsOf(job(), plan(), part, words(), style()).empty();
}

bool Session::apply(const std::string& name, const Job& job) {
  if (!isOpen()) return false;
  History history = opened_->history;
  if (!history.push(name, job)) return false;
  show(std::move(history), plan(), true);
  return true;
}

Session::Saved Session::save() {
  const bool nothingNew = isOpen() && opened_->history.isSaved() && !file_.isGone();
  if (file_.isChanged()) return Saved::ChangedOnDisk;
  return nothingNew ? Saved::Yes : write(file_.path());
}

Session::Saved Session::saveAs(const QString& path) { return file_.isSameAs(path) ? save() : write(path); }

Session::Saved Session::write(const QString& path) {
  if (!isOpen()) return Saved::Faulty;
  saveFaults_ = file_.write(job(), QString(path));
  if (!saveFaults_.empty()) return Saved::Faulty;
  opened_->history.markSaved();
  emit historyChanged();
  return Saved::Yes;
}

void Session::undo() {
  if (!isOpen() || !opened_->history.canUndo()) return;
  History history = opened_->history;
  history.undo();
  show(std::move(history), plan(), true);
}

void Session::redo() {
  if (!isOpen() || !opened_->history.canRedo()) return;
  History history = opened_->history;
  history.redo();
  show(std::move(history), plan(), true);
}

void Session::chooseWall(int wall) {
  if (!isOpen() || wall < 0 || wall >= static_cast<int>(job().walls.size()) || wall == wall_) return;
  wall_ = wall;
  pages_.reset();
  const bool letGo = chosen_ && chosen_->wall != chosenWall().letter;
  if (letGo) chosen_.reset();
  emit wallChanged();
  if (letGo) emit chosenChanged();
  emit pagesChanged();
}

void Session::chooseWall(const std::string& letter) {
  if (!isOpen()) return;
  if (const auto index = wallIndex(job(), letter)) chooseWall(static_cast<int>(*index));
}

void Session::choose(const std::optional<Part>& part) {
  if (!isOpen()) return;
  if (part && part->kind == Part::Kind::Face) {
    chooseWall(part->wall);
    return choose(std::nullopt);
  }
  const std::optional<Part> there = part && isThere(*part) ? part : std::nullopt;
  if (there == chosen_) return;
  chosen_ = there;
  if (chosen_) chooseWall(chosen_->wall);
  emit chosenChanged();
}

void Session::choosePaper(PaperSize paper) {
  if (paper == paper_) return;
  paper_ = paper;
  pages_.reset();
  emit pagesChanged();
}

const std::vector<Page>& Session::pages() const {
  if (!pages_) {
    pages_.emplace();
    if (isOpen() && wall_ >= 0) *pages_ = packetPages(job(), plan(), chosenWall().letter, paper_);
  }
  return *pages_;
}

}  // namespace ribwright
