// Plans jobs in a thread of its own, so that the window answers meanwhile. Of several jobs that wait the newest is
// planned and the others are left out; what comes of it is told in the order in which it was asked for.
#pragma once

#include <QObject>
#include <condition_variable>
#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "core/drawing/board_picture.h"
#include "core/job/job.h"
#include "core/plan/plan.h"

namespace ribwright {

struct Planned {
  std::uint64_t number = 0;  // of the asking, rising
  std::shared_ptr<const Job> job;
  std::shared_ptr<const Plan> plan;
  int wall = -1;                                // whose picture was made along; -1: none
  std::shared_ptr<const BoardPicture> picture;  // as the board shows it
};

class Planner : public QObject {
  Q_OBJECT

 public:
  explicit Planner(QObject* parent = nullptr);
  // Waits for what is being planned.
  ~Planner() override;

  // `previous`: a plan whose walls are kept where nothing changed. `wall`: whose picture is to be made along, in these
  // words; -1: none. Gives the asking's number.
  std::uint64_t ask(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> previous, int wall, const Words& words);
  // Leaves out what waits; what is being planned is not told any more.
  void drop();
  // Something is being planned or waits, or was not told yet.
  bool isBusy() const;
  // Waits until nothing is, and tells what came of it before it returns.
  void settle();

 signals:
  void planned(const ribwright::Planned& result);

 private:
  struct Asked {
    std::uint64_t number;
    std::shared_ptr<const Job> job;
    std::shared_ptr<const Plan> previous;
    int wall;
    const Words* words;
  };
  static Planned carriedOut(const Asked& asked);
  void work();
  void tell();

  mutable std::mutex mutex_;
  std::condition_variable changed_;
  std::optional<Asked> waiting_;
  std::optional<Planned> done_;
  bool working_ = false, ending_ = false;
  std::uint64_t last_ = 0;     // number of the last asking
  std::uint64_t dropped_ = 0;  // results up to this number are not told
  std::thread thread_;         // begun with the first asking
};

}  // namespace ribwright
