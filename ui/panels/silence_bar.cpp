#include "ui/panels/silence_bar.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>

#include "core/editing/silenced_edits.h"

namespace ribwright {

SilenceBar::SilenceBar(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      reason_(new QLineEdit(this)),
      button_(new QPushButton(tr("Put aside"), this)) {
  reason_->setObjectName(QStringLiteral("silenceReason"));
  reason_->setPlaceholderText(tr("Why it is no trouble"));
  reason_->setAccessibleName(tr("Why the finding is no trouble"));
  button_->setObjectName(QStringLiteral("silence"));
  button_->setToolTip(tr("Put the chosen finding aside, with the reason; it can be taken back"));
  button_->setAutoDefault(false);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(reason_, 1);
  layout->addWidget(button_);
  connect(button_, &QPushButton::clicked, this, &SilenceBar::silence);
  connect(reason_, &QLineEdit::returnPressed, this, &SilenceBar::silence);
  offerFor(std::nullopt);
}

void SilenceBar::offerFor(const std::optional<Finding>& finding) {
  const std::string key = finding ? finding->key() : std::string();
  if (key != key_) reason_->clear();
  key_ = key;
  setVisible(finding.has_value());
}

void SilenceBar::silence() {
  if (!session_.isOpen() || key_.empty()) return;
  const std::string reason = reason_->text().toStdString();
  const auto faults = session_.edit(tr("Put a finding aside").toStdString(),
                                    [&](const Job& newest) { return findingSilenced(newest, key_, reason); });
  if (faults.empty()) return;
  reason_->setFocus();
  emit failed(QString::fromStdString(faults.front().message));
}

}  // namespace ribwright
