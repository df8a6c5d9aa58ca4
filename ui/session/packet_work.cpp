#include "ui/session/packet_work.h"

#include <exception>

#include "core/output/file_set.h"
#include "ui/painting/paper_font.h"

namespace ribwright {

PacketWork::PacketWork(QObject* parent) : QObject(parent) {}

PacketWork::~PacketWork() {
  stop();
  if (thread_) thread_->wait();
}

bool PacketWork::start(std::shared_ptr<const Job> job, std::shared_ptr<const Plan> plan, const PacketForm& form,
                       const QString& folder) {
  if (isRunning()) return false;
  stopAsked_ = false;
  paperFontFamily();  // fonts are loaded here, in the application's own thread
  thread_.reset(QThread::create([this, job = std::move(job), plan = std::move(plan), form, folder] {
    PacketEnd end;
    try {
      end = work(*job, *plan, form, folder);
    } catch (const std::exception& error) {
      end = {folder, 0, false, {{"packet", error.what()}}};
    }
    QMetaObject::invokeMethod(
        this, [this, end] { finish(end); }, Qt::QueuedConnection);
  }));
  thread_->start();
  return true;
}

PacketEnd PacketWork::work(const Job& job, const Plan& plan, const PacketForm& form, const QString& folder) {
  PacketEnd end;
  end.folder = folder;
  PacketProgress progress;
  progress.step = [this](int done, int of) {
    QMetaObject::invokeMethod(
        this, [this, done, of] { emit progressed(done, of); }, Qt::QueuedConnection);
    return !stopAsked_;
  };
  const auto files = packetFiles(job, plan, form, progress);
  end.stopped = stopAsked_;
  if (end.stopped) return end;
  DiskStorage disk;
  end.faults = files ? writeFileSet(folder.toStdString(), files.value(), disk) : files.faults();
  if (end.faults.empty()) end.files = static_cast<int>(files.value().size());
  return end;
}

void PacketWork::finish(const PacketEnd& end) {
  thread_->wait();
  thread_.reset();
  emit ended(end);
}

}  // namespace ribwright
