#include "ui/session/session.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

#include "core/drawing/packet_pages.h"
#include "core/drawing/particulars.h"

namespace ribwright {

namespace {

// Up to so many holes a job is planned within a frame, also on a slow machine.
constexpr std::size_t quickHoles = 4000;

bool isQuick(const Plan& plan) {
  std::size_t holes = 0;
  for (const auto& wall : plan.walls) holes += wall->holes.holes.size();
  return holes <= quickHoles;
}

}  // namespace

Session::Session(QObject* parent) : QObject(parent) {
  connect(&planner_, &Planner::planned, this, &Session::takePlanned);
}

bool Session::open(const QString& path) {
  const bool same = isOpen() && path == file_.path();
  return open(readAndPlan(path, same ? plan() : Plan{}));
}

// Read into a job of its own first: what is open is only let go for one that can be read.
bool Session::open(ReadJob read) {
  faults_ = read.job ? std::vector<Fault>{} : read.job.faults();
  if (read.job) {
    const bool same = isOpen() && read.file.path() == file_.path();
    if (!same) lookedAt_ = false;
    file_ = std::move(read.file);
    take(History(read.job.value()), std::move(read.plan), same);
  }
  emit faultsChanged();
  return faults_.empty();
}

bool Session::reload() { return isOpen() && open(QString(path())); }

void Session::begin(const Job& job) { openKept(job, {}, {}); }

void Session::openKept(const Job& job, const QString& path, const QByteArray& digest) {
  file_ = JobOnDisk(path, digest);
  lookedAt_ = false;
  faults_.clear();
  take(History::unsaved(job), std::make_shared<const Plan>(ribwright::plan(job)), false);
  emit faultsChanged();
}

void Session::take(History history, std::shared_ptr<const Plan> plan, bool sameFile) {
  dropPreview();
  auto job = std::make_shared<const Job>(history.job());
  if (!sameFile) paper_ = customaryPaper(job->units);
  const auto shownJob = sameFile ? opened_->job : job;
  const auto previous = sameFile ? opened_->plan : std::make_shared<const Plan>();
  opened_ = Opened{std::move(history), job, shownJob, previous};
  show(std::move(job), std::move(plan), *previous, sameFile);
}

void Session::goOn(Step step) {
  lastStep_ = step;
  const auto seen = isPreview() ? preview_.plan : opened_->plan;  // has planned what was dragged
  dropPreview();
  const auto newest = opened_->newest = std::make_shared<const Job>(opened_->history.job());
  if (isQuick(plan())) {
    const auto previous = opened_->plan;
    return show(newest, std::make_shared<const Plan>(ribwright::plan(*newest, *seen)), *previous, true);
  }
  newestAsked_ = planner_.ask(newest, seen, wall_, words());
  emit historyChanged();
  emit previewChanged();
}

void Session::takePlanned(const Planned& result) {
  if (!isOpen()) return;
  if (previewFrom_ > 0 && result.number >= previewFrom_) {
    preview_ = result;
    return emit previewChanged();
  }
  if (result.number != newestAsked_) return;
  const auto previous = opened_->plan;
  drawn_ = result;
  show(result.job, result.plan, *previous, true);
}

void Session::show(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, const Plan& previous,
                   bool sameFile) {
  const std::string letter = sameFile && wall_ >= 0 ? chosenWall().letter : std::string();
  if (!sameFile) chosen_.reset(), chosenParts_.clear(), wanted_.clear();
  batchChanges_ = sameFile ? ribwright::batchChanges(previous, *plan) : BatchChanges{};
  orderChanges_ = sameFile ? ribwright::orderChanges(*opened_->job, previous, *job, *plan) : OrderChanges{};
  opened_->job = std::move(job);
  opened_->plan = std::move(plan);
  findingParts_.clear();
  for (const Finding& finding : this->plan().findings)
    findingParts_.push_back(partOf(this->job(), this->plan(), finding));
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
  const std::vector<Part> wanted = std::exchange(wanted_, {});
  chosenParts_ = thoseThere(wanted.empty() ? chosenParts_ : wanted);
  chosen_ = chosenParts_.empty() ? std::nullopt : std::optional(chosenParts_.back());
  if (!wanted.empty() && chosen_) wall_ = static_cast<int>(*wallIndex(job(), chosen_->wall));
}

bool Session::isThere(const Part& part) const {
  return isOpen() && !particularsOf(job(), plan(), part, words(), style()).empty();
}

std::vector<Part> Session::thoseThere(const std::vector<Part>& parts) const {
  std::vector<Part> there;
  for (const Part& part : parts) {
    if (part.wall == parts.back().wall && isThere(part)) there.push_back(part);
  }
  return there;
}

bool Session::apply(const std::string& name, const Job& job, std::string_view merging) {
  if (!isOpen()) return false;
  if (!opened_->history.push(name, job, merging)) {
    endPreview();
    return false;
  }
  goOn(Step::Edited);
  return true;
}

std::vector<Fault> Session::edit(const std::string& name, const Edit& edit, std::string_view merging) {
  if (!isOpen()) return {};
  const Outcome<Job> made = edit(newest());
  if (!made) return made.faults();
  apply(name, made.value(), merging);
  return {};
}

void Session::endMerging() {
  if (isOpen()) opened_->history.endMerging();
}

void Session::preview(const Job& job) {
  if (!isOpen()) return;
  auto seen = std::make_shared<const Job>(job);
  const auto previous = isPreview() ? preview_.plan : opened_->plan;
  if (!isQuick(plan())) {
    const std::uint64_t number = planner_.ask(std::move(seen), previous, wall_, words());
    if (previewFrom_ == 0) previewFrom_ = number;
    return;
  }
  auto planned = std::make_shared<const Plan>(ribwright::plan(*seen, *previous));
  dropPreview();  // one that was asked for before would come over it
  preview_ = {0, std::move(seen), std::move(planned), -1, nullptr};
  emit previewChanged();
}

// The newest job may have waited for its plan when the preview began.
void Session::endPreview() {
  if (!isOpen() || (!isPreview() && previewFrom_ == 0)) return;
  dropPreview();
  if (opened_->newest != opened_->job) newestAsked_ = planner_.ask(opened_->newest, opened_->plan, wall_, words());
  emit previewChanged();
}

void Session::settle() {
  planner_.settle();
  if (!isOpen() || newest() == job()) return;
  endPreview();
  planner_.settle();
}

QString Session::folder() const { return path().isEmpty() ? QDir::homePath() : QFileInfo(path()).absolutePath(); }

std::shared_ptr<const BoardPicture> Session::drawn() const {
  const Planned& made = isPreview() ? preview_ : drawn_;
  const bool ofWhatIsSeen = isPreview() || (isOpen() && made.job == opened_->job);
  return ofWhatIsSeen && made.wall == wall_ ? made.picture : nullptr;
}

void Session::dropPreview() {
  planner_.drop();
  preview_ = {};
  previewFrom_ = 0;
}

void Session::setLookedAt(bool lookedAt) {
  if (lookedAt == lookedAt_) return;
  lookedAt_ = lookedAt;
  emit historyChanged();
}

Session::Saved Session::save() {
  if (path().isEmpty()) return Saved::Unnamed;
  if (lookedAt_) return Saved::LookedAt;
  const bool nothingNew = isOpen() && opened_->history.isSaved() && !file_.isGone();
  if (file_.isChanged()) return Saved::ChangedOnDisk;
  return nothingNew ? Saved::Yes : write(file_.path());
}

Session::Saved Session::saveAs(const QString& path) { return file_.isSameAs(path) ? save() : write(path); }

Session::Saved Session::write(const QString& path) {
  if (!isOpen()) return Saved::Faulty;
  saveFaults_ = file_.write(newest(), QString(path));
  if (!saveFaults_.empty()) return Saved::Faulty;
  lookedAt_ = false;  // saved into a file of its own
  opened_->history.markSaved();
  emit historyChanged();
  return Saved::Yes;
}

void Session::undo() {
  if (isOpen() && opened_->history.undo()) goOn(Step::Undone);
}

void Session::redo() {
  if (isOpen() && opened_->history.redo()) goOn(Step::Redone);
}

void Session::chooseWall(int wall) {
  if (!isOpen() || wall < 0 || wall >= static_cast<int>(job().walls.size()) || wall == wall_) return;
  wall_ = wall;
  pages_.reset();
  const bool letGo = chosen_ && chosen_->wall != chosenWall().letter;
  if (letGo) chosen_.reset(), chosenParts_.clear();
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
    return chooseParts({});
  }
  chooseParts(part ? std::vector<Part>{*part} : std::vector<Part>{});
}

void Session::chooseParts(const std::vector<Part>& parts) {
  if (!isOpen()) return;
  endMerging();
  wanted_ = opened_->newest != opened_->job ? parts : std::vector<Part>{};
  std::vector<Part> there = thoseThere(parts);
  if (there == chosenParts_) return;
  chosenParts_ = std::move(there);
  chosen_ = chosenParts_.empty() ? std::nullopt : std::optional(chosenParts_.back());
  if (chosen_) chooseWall(chosen_->wall);
  emit chosenChanged();
}

void Session::chooseAlso(const Part& part) {
  std::vector<Part> parts = chosenParts_;
  if (std::erase(parts, part) == 0) {
    if (!parts.empty() && parts.back().wall != part.wall) parts.clear();
    parts.push_back(part);
  }
  chooseParts(parts);
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
