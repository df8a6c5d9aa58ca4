#include "ui/panels/packet_bar.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>

namespace ribwright {

PacketBar::PacketBar(QWidget* parent)
    : QWidget(parent), bar_(new QProgressBar(this)), stop_(new QPushButton(tr("Stop"), this)) {
  bar_->setObjectName(QStringLiteral("packetProgress"));
  bar_->setAccessibleName(tr("Packet being made"));
  bar_->setMinimumWidth(20 * fontMetrics().averageCharWidth());
  stop_->setObjectName(QStringLiteral("stopPacketNow"));
  stop_->setAccessibleName(tr("Stop the packet"));
  connect(stop_, &QPushButton::clicked, this, [this] {
    stop_->setEnabled(false);
    emit stopAsked();
  });
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(bar_, 1);
  layout->addWidget(stop_);
  hide();
}

void PacketBar::begin() {
  stop_->setEnabled(true);
  setProgress(0, 0);
  show();
}

void PacketBar::setProgress(int done, int of) {
  bar_->setRange(0, of);
  bar_->setValue(done);
}

}  // namespace ribwright
