// All that is stated of a job, page by page: what the tables of the job file hold, every field of it.
#pragma once

#include <QDialog>
#include <string>
#include <vector>

class QListWidget;
class QStackedWidget;

namespace ribwright {

class FieldForm;
class FieldList;
class Session;

class JobDialog : public QDialog {
  Q_OBJECT

 public:
  explicit JobDialog(Session& session, QWidget* parent = nullptr);

  int pages() const;
  void showPage(int page);
  // Of an object or list of the job by its key: "trim_rules".
  void showPageOf(const std::string& path);
  void finishTyping();

 protected:
  void changeEvent(QEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  struct Page {
    FieldForm* form = nullptr;
    FieldList* list = nullptr;
    std::string path;
  };
  void makePages();
  void addPage(const QString& title, Page page, QWidget* shown);
  void refresh();
  void fit();

  Session& session_;
  QListWidget* titles_;
  QStackedWidget* stack_;
  std::vector<Page> pages_;
};

}  // namespace ribwright
