#include "ui/panels/paper_text.h"

#include <QCoreApplication>

namespace ribwright {

namespace {

struct Texts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PaperSize)
};

}  // namespace

QString paperText(PaperSize paper) {
  switch (paper) {
    case PaperSize::Letter:
      return Texts::tr("Letter");
    case PaperSize::Tabloid:
      return Texts::tr("Tabloid");
    case PaperSize::A4:
      return Texts::tr("A4");
    case PaperSize::A3:
      break;
  }
  return Texts::tr("A3");
}

}  // namespace ribwright
