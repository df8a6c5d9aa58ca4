#include "ui/panels/paper_text.h"

#include <QCoreApplication>

namespace ribwright {

namespace {

struct PaperTextTexts {
  Q_DECLARE_TR_FUNCTIONS(ribwright::PaperSize)
};

}  // namespace

QString paperText(PaperSize paper) {
  switch (paper) {
    case PaperSize::Letter:
      return PaperTextTexts::tr("Letter");
    case PaperSize::Tabloid:
      return PaperTextTexts::tr("Tabloid");
    case PaperSize::A4:
      return PaperTextTexts::tr("A4");
    case PaperSize::A3:
      break;
  }
  return PaperTextTexts::tr("A3");
}

}  // namespace ribwright
