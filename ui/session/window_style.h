// The system's style with the signs of title bars and of bars too short for their entries drawn as lines: sharp at any
// scale, in the palette's ink, light or dark. Showing the window needs no picture files, hence none of Qt's readers of
// pictures.
#pragma once

#include <QProxyStyle>

namespace ribwright {

class WindowStyle : public QProxyStyle {
 public:
  // `name`: of the style it is drawn in otherwise, as QStyleFactory knows it.
  explicit WindowStyle(const QString& name) : QProxyStyle(name), name_(name) {}

  QString drawnAs() const { return name_; }
  QIcon standardIcon(StandardPixmap sign, const QStyleOption* option, const QWidget* widget) const override;

 private:
  QString name_;
};

}  // namespace ribwright
