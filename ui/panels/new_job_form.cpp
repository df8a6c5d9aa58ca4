#include "ui/panels/new_job_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include "core/editing/new_job_fields.h"
#include "core/editing/new_job_file.h"
#include "core/job/job_file.h"
#include "core/job/pattern_file.h"
#include "ui/panels/grade_text.h"
#include "ui/session/window_text.h"

namespace ribwright {

namespace {

template <class E>
int at(E value) {
  return static_cast<int>(value);
}

void choose(QComboBox* box, int value) { box->setCurrentIndex(box->findData(value)); }

// A name that the list has not stays to be seen, with its fault.
void chooseName(QComboBox* box, const std::string& name) {
  if (box->findData(text(name)) < 0) box->addItem(text(name), text(name));
  box->setCurrentIndex(box->findData(text(name)));
}

std::string nameOf(const QComboBox* box) { return box->currentData().toString().toStdString(); }

LengthStyle styleOf(const NewJob& stated) { return {stated.units, stated.decimalComma ? ',' : '.'}; }

}  // namespace

NewJobForm::NewJobForm(const NewJob& stated, QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setVerticalSpacing(fontMetrics().height() / 4);
  makeFields();
  grid_->setColumnStretch(1, 1);
  grid_->setColumnStretch(3, 1);
  grid_->setRowStretch(grid_->rowCount(), 1);
  setStated(stated);
}

QLabel* NewJobForm::label(const QString& words, QWidget* buddy) {
  auto* made = new QLabel(words, this);
  made->setBuddy(buddy);
  labels_[buddy] = made;
  return made;
}

QLineEdit* NewJobForm::text(const char* key, std::string NewJob::*member, const char* name, const QString& reads) {
  auto* edit = new QLineEdit(this);
  edit->setObjectName(QLatin1String(name));
  edit->setAccessibleName(reads);
  edit->installEventFilter(this);
  connect(edit, &QLineEdit::textEdited, this, &NewJobForm::takeTyped);
  fields_[key] = {edit, member};
  order_ << edit;
  return edit;
}

QComboBox* NewJobForm::choice(const char* name, const QString& reads, const std::vector<Choice>& choices) {
  auto* box = new QComboBox(this);
  box->setObjectName(QLatin1String(name));
  box->setAccessibleName(reads);
  box->setFocusPolicy(Qt::StrongFocus);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(12);
  box->installEventFilter(this);
  for (const Choice& each : choices) box->addItem(each.words, each.value);
  connect(box, &QComboBox::currentIndexChanged, this, &NewJobForm::takeChoices);
  return box;
}

// One or two fields side by side, and room for their faults under them.
void NewJobForm::addRow(const std::vector<std::pair<QString, QWidget*>>& fields) {
  const int row = grid_->rowCount();
  auto* fault = new QLabel(this);
  fault->setWordWrap(true);
  fault->setTextFormat(Qt::PlainText);
  fault->hide();
  int column = 0;
  for (const auto& [words, field] : fields) {
    grid_->addWidget(label(words, field), row, column);
    grid_->addWidget(field, row, column + 1, 1, fields.size() == 1 ? 3 : 1);
    column += 2;
    rowFault_[field] = fault;
  }
  fault->setObjectName(fields.front().second->objectName() + QStringLiteral("Fault"));
  grid_->addWidget(fault, row + 1, 1, 1, 3);
}

void NewJobForm::makeFields() {
  makeBuilding();
  makeSteel();
  makeSheets();
  makeSite();
  for (const auto& [key, field] : fields_) faults_[key] = rowFault_.at(field.edit);
  faults_["member"] = rowFault_.at(member_);
  faults_["profile"] = rowFault_.at(profile_);
  faults_["pattern"] = rowFault_.at(pattern_);
}

void NewJobForm::makeBuilding() {
  auto* name = text("name", &NewJob::name, "newName", tr("Name of the job"));
  auto* number = text("number", &NewJob::number, "newNumber", tr("Job number"));
  addRow({{tr("&Job"), name}, {tr("N&umber"), number}});
  units_ = choice("newUnits", tr("Units"),
                  {{tr("Feet and inches"), 0}, {tr("Millimetres"), 1}, {tr("Millimetres, decimal comma"), 2}});
  shape_ = choice(
      "newShape", tr("What is built"),
      {{tr("Building, four walls"), at(NewJob::Shape::Rectangle)}, {tr("One free wall"), at(NewJob::Shape::FreeWall)}});
  addRow({{tr("Units"), units_}, {tr("Built is"), shape_}});
  auto* length = text("length", &NewJob::length, "newLength", tr("Length, along the front"));
  auto* width = text("width", &NewJob::width, "newWidth", tr("Width"));
  addRow({{tr("&Length, along the front"), length}, {tr("&Width"), width}});
  roof_ = choice("newRoof", tr("Roof"),
                 {{tr("Gable"), at(Roof::Kind::Gable)},
                  {tr("Single slope"), at(Roof::Kind::SingleSlope)},
                  {tr("Level eave"), at(Roof::Kind::Level)}});
  ends_ =
      choice("newEnds", tr("End walls"), {{tr("B and D"), at(Roof::Ends::BD)}, {tr("A and C"), at(Roof::Ends::AC)}});
  addRow({{tr("Roof"), roof_}, {tr("End walls"), ends_}});
  auto* eave = text("eave", &NewJob::eave, "newEave", tr("Height of the steel line at the eave"));
  auto* slope = text("slope", &NewJob::slope, "newSlope", tr("Slope as 4:12, or height of the ridge"));
  addRow({{tr("&Eave"), eave}, {tr("&Slope, or ridge"), slope}});
}

void NewJobForm::makeSteel() {
  auto* sideBays = text("side_bays", &NewJob::sideBays, "newSideBays", tr("Bays of the side walls"));
  auto* endBays = text("end_bays", &NewJob::endBays, "newEndBays", tr("Bays of the end walls"));
  addRow({{tr("&Bays of the sides"), sideBays}, {tr("of the ends"), endBays}});
  auto* sideGirts = text("side_girts", &NewJob::sideGirts, "newSideGirts",
                         tr("Heights of the side walls' girts from the top of concrete"));
  auto* endGirts = text("end_girts", &NewJob::endGirts, "newEndGirts",
                        tr("Heights of the end walls' girts from the top of concrete"));
  addRow({{tr("&Girts of the sides"), sideGirts}, {tr("of the ends"), endGirts}});
  member_ = choice("newMember", tr("Cross-section of the girts"), {});
  typedBy_ = choice("newTypedBy", tr("What a girt's height is the height of"),
                    {{tr("centre"), at(Girt::TypedBy::Centre)},
                     {tr("web line"), at(Girt::TypedBy::WebLine)},
                     {tr("bottom"), at(Girt::TypedBy::Bottom)},
                     {tr("top"), at(Girt::TypedBy::Top)}});
  addRow({{tr("Girts are"), member_}, {tr("heights to their"), typedBy_}});
  setting_ = choice("newSetting", tr("Girts and columns"),
                    {{tr("bypass"), at(GirtSetting::Bypass)}, {tr("flush"), at(GirtSetting::Flush)}});
  addRow({{tr("Girts pass columns"), setting_}});
  base_ = choice("newBase", tr("How sheets end at the bottom"),
                 {{tr("below concrete"), at(Base::Form::Overhang)},
                  {tr("in a notch"), at(Base::Form::Notch)},
                  {tr("on base trim"), at(Base::Form::BaseTrim)},
                  {tr("on a wall"), at(Base::Form::OnWall)}});
  auto* height = text("base_height", &NewJob::baseHeight, "newBaseHeight", tr("Drop, depth or height of the base"));
  addRow({{tr("Sheets end"), base_}, {tr("b&y"), height}});
}

void NewJobForm::makeSheets() {
  profile_ = choice("newProfile", tr("Profile of the sheets"), {});
  addRow({{tr("Sheets"), profile_}});
  pattern_ = choice("newPattern", tr("Pattern of the screws"), {});
  addRow({{tr("Screws"), pattern_}});
}

void NewJobForm::makeSite() {
  auto* colour = text("colour", &NewJob::colour, "newColour", tr("Colour as ordered"));
  wind_ = choice("newWind", tr("Prevailing wind blows from"),
                 {{tr("not stated"), 0},
                  {tr("north"), 1},
                  {tr("north-east"), 2},
                  {tr("east"), 3},
                  {tr("south-east"), 4},
                  {tr("south"), 5},
                  {tr("south-west"), 6},
                  {tr("west"), 7},
                  {tr("north-west"), 8}});
  addRow({{tr("&Colour"), colour}, {tr("Wind from"), wind_}});
  seen_ = choice("newSeen", tr("Where people pass by"),
                 {{tr("nowhere"), 0},
                  {tr("before wall A"), 1},
                  {tr("before wall B"), 2},
                  {tr("before wall C"), 3},
                  {tr("before wall D"), 4}});
  auto* away = text("seen_at", &NewJob::seenAt, "newSeenAt", tr("How far away people pass by"));
  addRow({{tr("Road"), seen_}, {tr("&at a distance of"), away}});
}

void NewJobForm::fillMembers() {
  member_->clear();
  member_->addItem(tr("not stated"), QString());
  for (const Member& member : ordinaryMembers(stated_.units))
    member_->addItem(ribwright::text(member.id), ribwright::text(member.id));
  chooseName(member_, stated_.member);
}

void NewJobForm::fillProfiles() {
  profile_->clear();
  profile_->addItem(tr("none chosen yet"), QString());
  for (const Profile& profile : shippedProfiles())
    profile_->addItem(ribwright::text(profile.name), ribwright::text(profile.id));
  chooseName(profile_, stated_.profile);
}

void NewJobForm::fillPatterns() {
  pattern_->clear();
  pattern_->addItem(tr("none stated yet"), QString());
  for (const PatternExample& example : shippedPatterns()) {
    if (example.pattern.profile != stated_.profile) continue;
    pattern_->addItem(tr("%1, example").arg(ribwright::text(example.pattern.id)), ribwright::text(example.pattern.id));
  }
  chooseName(pattern_, stated_.pattern);
}

void NewJobForm::setStated(const NewJob& stated) {
  stated_ = stated;
  autoSideBays_ = stated.sideBays;
  autoEndBays_ = stated.endBays;
  show(stated);
  emit changed();
}

void NewJobForm::show(const NewJob& stated) {
  showing_ = true;
  for (const auto& [key, field] : fields_) {
    const QString words = ribwright::text(stated.*field.member);
    if (field.edit->text() != words) field.edit->setText(words);
  }
  choose(units_, stated.units == UnitSystem::FeetInches ? 0 : stated.decimalComma ? 2 : 1);
  choose(shape_, at(stated.shape));
  choose(roof_, at(stated.roof == Roof::Kind::None ? Roof::Kind::Level : stated.roof));
  choose(ends_, at(stated.ends));
  choose(typedBy_, at(stated.typedBy));
  choose(setting_, at(stated.girtSetting));
  choose(base_, at(stated.base));
  choose(seen_, at(stated.seenFrom));
  choose(wind_, at(stated.wind));
  fillMembers();
  fillProfiles();
  fillPatterns();
  fitToShape();
  showing_ = false;
}

void NewJobForm::takeTyped() {
  if (showing_) return;
  for (const auto& [key, field] : fields_) stated_.*field.member = field.edit->text().toStdString();
  followBays();
  emit changed();
}

// Bays that nobody typed follow the building.
void NewJobForm::followBays() {
  const bool endsAC = stated_.ends == Roof::Ends::AC && stated_.shape == NewJob::Shape::Rectangle;
  const auto follow = [&](const char* key, std::string& kept, const std::string& width) {
    const Field& field = fields_.at(key);
    const std::string bays = equalBaysText(width, styleOf(stated_));
    if (stated_.*field.member != kept || bays.empty()) return;
    stated_.*field.member = kept = bays;
    field.edit->setText(ribwright::text(bays));
  };
  const QWidget* typing = focusWidget();
  if (typing == fields_.at("side_bays").edit || typing == fields_.at("end_bays").edit) return;
  follow("side_bays", autoSideBays_, endsAC ? stated_.width : stated_.length);
  follow("end_bays", autoEndBays_, endsAC ? stated_.length : stated_.width);
}

void NewJobForm::takeChoices() {
  if (showing_) return;
  takeUnits();
  takeBase();
  takeProfile();
  stated_.shape = static_cast<NewJob::Shape>(shape_->currentData().toInt());
  stated_.roof = static_cast<Roof::Kind>(roof_->currentData().toInt());
  stated_.ends = static_cast<Roof::Ends>(ends_->currentData().toInt());
  stated_.member = nameOf(member_);
  stated_.typedBy = static_cast<Girt::TypedBy>(typedBy_->currentData().toInt());
  stated_.girtSetting = static_cast<GirtSetting>(setting_->currentData().toInt());
  stated_.pattern = nameOf(pattern_);
  stated_.seenFrom = static_cast<NewJob::Side>(seen_->currentData().toInt());
  stated_.wind = static_cast<NewJob::Wind>(wind_->currentData().toInt());
  followBays();
  fitToShape();
  emit changed();
}

// What nobody has touched becomes what is usual in the other units, the rest is what was typed, in them.
void NewJobForm::takeUnits() {
  const int chosen = units_->currentData().toInt();
  const UnitSystem units = chosen == 0 ? UnitSystem::FeetInches : UnitSystem::Millimetres;
  const bool comma = chosen == 2;
  if (units == stated_.units && comma == stated_.decimalComma) return;
  stated_ = inOtherUnits(stated_, units, comma);
  autoSideBays_ = stated_.sideBays;
  autoEndBays_ = stated_.endBays;
  show(stated_);
}

void NewJobForm::takeBase() {
  const auto form = static_cast<Base::Form>(base_->currentData().toInt());
  if (form == stated_.base) return;
  if (stated_.baseHeight == usualBaseHeight(stated_.base, stated_.units)) {
    stated_.baseHeight = usualBaseHeight(form, stated_.units);
    fields_.at("base_height").edit->setText(ribwright::text(stated_.baseHeight));
  }
  stated_.base = form;
}

// Another profile takes the first pattern that is shipped for it.
void NewJobForm::takeProfile() {
  const std::string profile = nameOf(profile_);
  if (profile == stated_.profile) return;
  stated_.profile = profile;
  stated_.pattern.clear();
  for (const PatternExample& example : shippedPatterns()) {
    if (stated_.pattern.empty() && example.pattern.profile == profile) stated_.pattern = example.pattern.id;
  }
  showing_ = true;
  fillPatterns();
  showing_ = false;
}

void NewJobForm::fitToShape() {
  const bool building = stated_.shape == NewJob::Shape::Rectangle;
  const auto see = [&](QWidget* field, bool seen) {
    field->setVisible(seen);
    labels_.at(field)->setVisible(seen);
  };
  for (const char* key : {"width", "end_bays", "end_girts"}) see(fields_.at(key).edit, building);
  see(ends_, building);
  see(fields_.at("slope").edit, stated_.roof != Roof::Kind::Level && stated_.roof != Roof::Kind::None);
  labels_.at(fields_.at("slope").edit)
      ->setText(stated_.roof == Roof::Kind::SingleSlope ? tr("&Slope, or high side") : tr("&Slope, or ridge"));
  see(fields_.at("seen_at").edit, stated_.seenFrom != NewJob::Side::Nowhere);
  labels_.at(fields_.at("base_height").edit)
      ->setText(stated_.base == Base::Form::BaseTrim || stated_.base == Base::Form::OnWall ? tr("at h&eight")
                                                                                           : tr("b&y"));
}

void NewJobForm::setEndGirtsHint(const QString& heights) { fields_.at("end_girts").edit->setPlaceholderText(heights); }

void NewJobForm::showFaults(const std::vector<Fault>& faults) {
  std::map<QLabel*, QStringList> lines;
  for (const auto& [key, words] : faults_) lines[words];
  for (const Fault& fault : faults) {
    const auto found = faults_.find(fault.place);
    if (found == faults_.end()) continue;
    lines[found->second] << gradeSign(Grade::Stop) + QLatin1Char(' ') + ribwright::text(fault.message);
  }
  for (const auto& [words, said] : lines) {
    words->setText(said.join(QLatin1Char('\n')));
    words->setVisible(!said.isEmpty());
  }
  for (const auto& [key, field] : fields_)
    field.edit->setAccessibleDescription(faults_.at(key)->isHidden() ? QString() : faults_.at(key)->text());
}

QLineEdit* NewJobForm::firstField() const { return order_.front(); }

QList<QLineEdit*> NewJobForm::typedFields() const {
  QList<QLineEdit*> seen;
  for (QLineEdit* edit : order_) {
    if (!edit->isHidden()) seen << edit;
  }
  return seen;
}

bool NewJobForm::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Wheel) {  // a wheel changes only what has the keyboard
    auto* box = qobject_cast<QComboBox*>(watched);
    if (box && !box->hasFocus()) return event->ignore(), true;
  }
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
  auto* edit = qobject_cast<QLineEdit*>(watched);
  if (!enter || !edit || key->modifiers() & Qt::ControlModifier) return QWidget::eventFilter(watched, event);
  const QList<QLineEdit*> fields = typedFields();
  const qsizetype next = fields.indexOf(edit) + 1;
  if (next >= fields.size()) return emit lastDone(), true;
  fields[next]->setFocus(Qt::TabFocusReason);
  fields[next]->selectAll();
  return true;
}

}  // namespace ribwright
