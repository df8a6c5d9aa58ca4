#include <cmath>
#include <exception>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>
#include <set>
#include <stdexcept>

#include "ui/printing/pdf_module.h"
#include "ui/printing/pdf_outline.h"

namespace ribwright {

namespace {

constexpr double pointsPerMillimetre = 72 / 25.4;

QPDFObjectHandle unicode(const std::string& text) { return QPDFObjectHandle::newUnicodeString(text); }

// The page's own upper edge stays where Qt drew down from; its lower edge moves to the exact height. Four decimals of a
// point are 0.00004 mm.
void makeExact(QPDFObjectHandle leaf, const PaperExtent& extent) {
  QPDFObjectHandle painted = leaf.getKey("/MediaBox");
  if (!painted.isRectangle()) throw std::runtime_error("a page has no box");
  const double top = painted.getArrayAsRectangle().ury;
  const double exact = top - extent.height * pointsPerMillimetre, bottom = std::abs(exact) < 1e-6 ? 0 : exact;
  QPDFObjectHandle box = QPDFObjectHandle::newArray();
  for (const double edge : {0.0, bottom, extent.width * pointsPerMillimetre, top})
    box.appendItem(QPDFObjectHandle::newReal(edge, 4));
  leaf.replaceKey("/MediaBox", box);
  leaf.removeKey("/Annots");  // there are none
}

// "/AAAAAB+LiberationSans": a part of a font is named by six letters of its own (9.6.4).
std::string partName(const std::string& name, int number) {
  std::string tag = "AAAAAA";
  for (std::size_t at = tag.size(); number > 0; number /= 26) tag[--at] = static_cast<char>('A' + number % 26);
  const std::size_t plus = name.find('+');
  return "/" + tag + "+" + name.substr(plus == std::string::npos ? 1 : plus + 1);
}

void nameFont(QPDFObjectHandle font, int number) {
  const auto rename = [number](QPDFObjectHandle of, const char* key) {
    of.replaceKey(key, QPDFObjectHandle::newName(partName(of.getKey(key).getName(), number)));
  };
  rename(font, "/BaseFont");
  for (QPDFObjectHandle& whole : font.getKey("/DescendantFonts").aitems()) {
    rename(whole, "/BaseFont");
    rename(whole.getKey("/FontDescriptor"), "/FontName");
  }
}

void nameFonts(const std::vector<QPDFObjectHandle>& leaves) {
  std::set<QPDFObjGen> named;
  for (QPDFObjectHandle leaf : leaves) {
    const auto fonts = leaf.getKey("/Resources").getKey("/Font").getDictAsMap();
    for (const auto& [name, font] : fonts) {
      if (named.insert(font.getObjGen()).second) nameFont(font, static_cast<int>(named.size()) - 1);
    }
  }
}

// Page labels 1, 2, 3 ... as the pages say of themselves (12.4.2).
void addLabels(QPDF& pdf) {
  pdf.getRoot().replaceKey("/PageLabels", QPDFObjectHandle::parse("<</Nums [0 <</S /D>>]>>"));
}

// "D:20260302000000Z" for 2026-03-02 (7.9.4), empty for anything else.
std::string dateOf(const std::string& date) {
  const auto digits = [&](std::size_t at, std::size_t count) {
    return date.substr(at, count).find_first_not_of("0123456789") == std::string::npos;
  };
  if (date.size() != 10 || date[4] != '-' || date[7] != '-') return {};
  if (!digits(0, 4) || !digits(5, 2) || !digits(8, 2)) return {};
  const std::string month = date.substr(5, 2), day = date.substr(8, 2);
  if (month < "01" || month > "12" || day < "01" || day > "31") return {};
  return "D:" + date.substr(0, 4) + month + day + "000000Z";
}

void describe(QPDF& pdf, const PdfDocument& document) {
  QPDFObjectHandle info = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
  info.replaceKey("/Title", unicode(document.title));
  for (const char* key : {"/Creator", "/Producer"}) info.replaceKey(key, unicode("Ribwright"));
  if (const std::string date = dateOf(document.date); !date.empty())
    info.replaceKey("/CreationDate", QPDFObjectHandle::newString(date));
  pdf.getTrailer().replaceKey("/Info", info);
  QPDFObjectHandle root = pdf.getRoot();
  if (!document.language.empty()) root.replaceKey("/Lang", QPDFObjectHandle::newString(document.language));
  root.replaceKey("/PageMode", QPDFObjectHandle::newName("/UseOutlines"));
  // A page is measured on: whoever prints it prints it at its own size (12.2).
  root.replaceKey("/ViewerPreferences", QPDFObjectHandle::parse("<</PrintScaling /None /DisplayDocTitle true>>"));
}

std::string written(QPDF& pdf) {
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setDeterministicID(true);
  writer.setObjectStreamMode(qpdf_o_generate);
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

std::string finished(const std::string& painted, const std::vector<PdfLeaf>& pages, const PdfDocument& document) {
  try {
    QPDF qt, pdf;
    qt.setSuppressWarnings(true);
    qt.processMemoryFile("pages", painted.data(), painted.size());
    pdf.emptyPDF();
    for (const QPDFObjectHandle& leaf : qt.getAllPages()) pdf.addPage(leaf, false);
    const std::vector<QPDFObjectHandle> leaves = pdf.getAllPages();
    if (leaves.size() != pages.size() || qt.anyWarnings()) return {};
    for (std::size_t i = 0; i < leaves.size(); ++i) makeExact(leaves[i], pages[i].extent);
    nameFonts(leaves);
    addOutline(pdf, leaves, pages);
    addLabels(pdf);
    describe(pdf, document);
    return written(pdf);
  } catch (const std::exception&) {
    return {};
  }
}

}  // namespace

}  // namespace ribwright

// As pdf_module.h has it.
extern "C" void ribwrightFinishPdf(const std::string& painted, const std::vector<ribwright::PdfLeaf>& pages,
                                   const ribwright::PdfDocument& document, std::string& made) {
  made = ribwright::finished(painted, pages, document);
}
