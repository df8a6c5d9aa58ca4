#include "ui/printing/pdf_outline.h"

namespace ribwright {

namespace {

using Bookmark = QPDFObjectHandle;

Bookmark itemFor(QPDF& pdf, const std::string& title, QPDFObjectHandle leaf) {
  Bookmark item = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
  item.replaceKey("/Title", QPDFObjectHandle::newUnicodeString(title));
  QPDFObjectHandle place = QPDFObjectHandle::newArray();
  place.appendItem(leaf);
  place.appendItem(QPDFObjectHandle::newName("/Fit"));
  item.replaceKey("/Dest", place);
  return item;
}

// Hangs the items under their parent as a chain; `count` as 12.3.3 wants it: how many show, negative where closed.
void hang(Bookmark parent, std::vector<Bookmark>& items, int count) {
  for (std::size_t i = 0; i < items.size(); ++i) {
    items[i].replaceKey("/Parent", parent);
    if (i > 0) items[i].replaceKey("/Prev", items[i - 1]);
    if (i + 1 < items.size()) items[i].replaceKey("/Next", items[i + 1]);
  }
  parent.replaceKey("/First", items.front());
  parent.replaceKey("/Last", items.back());
  parent.replaceKey("/Count", QPDFObjectHandle::newInteger(count));
}

}  // namespace

void addOutline(QPDF& pdf, const std::vector<QPDFObjectHandle>& leaves, const std::vector<PdfLeaf>& pages) {
  std::vector<Bookmark> headings;
  for (std::size_t first = 0; first < pages.size();) {
    std::size_t end = first + 1;
    while (end < pages.size() && pages[end].heading == pages[first].heading) ++end;
    const bool several = end - first > 1;
    headings.push_back(itemFor(pdf, several ? pages[first].heading : pages[first].title, leaves[first]));
    std::vector<Bookmark> own;
    for (std::size_t i = first; several && i < end; ++i) own.push_back(itemFor(pdf, pages[i].title, leaves[i]));
    if (several) hang(headings.back(), own, -static_cast<int>(own.size()));
    first = end;
  }
  Bookmark root = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
  hang(root, headings, static_cast<int>(headings.size()));
  pdf.getRoot().replaceKey("/Outlines", root);
}

}  // namespace ribwright
