#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/catalogue/catalogue.h"
#include "core/usecase/box_items.h"
#include "core/usecase/box_notes.h"
#include "core/usecase/box_questions.h"
#include "core/usecase/family.h"
#include "core/usecase/forecast_box.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/plan_week.h"
#include "core/usecase/restock.h"
#include "core/usecase/search_floor.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/take_out.h"
#include "core/usecase/tend_item.h"
#include "core/usecase/workplace.h"

#include <memory>
#include <optional>

namespace lidlark::mobile {

/// All a screen may ask of the core: this phone's store, its catalogue, and whose box is on the
/// table. Made by `main` (or a test) before the first screen.
class Household : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    /// Alias of the child whose box the screens are about. Empty: none yet.
    Q_PROPERTY(QString child READ child WRITE setChild NOTIFY childChanged FINAL)
    /// Aliases of all children with a box on this phone.
    Q_PROPERTY(QList<QString> children READ children NOTIFY childrenChanged FINAL)
    Q_PROPERTY(QString person READ person NOTIFY childrenChanged FINAL)
    Q_PROPERTY(QString homeName READ homeName NOTIFY childrenChanged FINAL)
    /// The phone of the one who packs the boxes.
    Q_PROPERTY(bool therapist READ therapist NOTIFY childrenChanged FINAL)
    /// The first run is still to come.
    Q_PROPERTY(bool needsWelcome READ needsWelcome NOTIFY childrenChanged FINAL)
    /// One sentence why nothing can be done (torn store, clock in 1970 ...), or empty.
    /// What of the catalogue could not be read; empty: all could.
    Q_PROPERTY(QString catalogueNote READ catalogueNote CONSTANT FINAL)
    /// Who has checked the words a family reads; empty: a clinician has, all of them.
    Q_PROPERTY(QString reviewNotice READ reviewNotice CONSTANT FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged FINAL)

public:
    /// Where things are. Catalogue folders may be resources.
    struct Places {
        QString store;
        QString catalogue = QStringLiteral(":/lidlark/catalogue");
    };

    Household(const Places &places, std::unique_ptr<Clock> clock, std::unique_ptr<Entropy> entropy,
              QObject *parent = nullptr);
    ~Household() override;

    [[nodiscard]] QString child() const { return m_child; }
    void setChild(const QString &alias);
    [[nodiscard]] QStringList children() const { return m_children; }
    [[nodiscard]] QString person() const;
    [[nodiscard]] DeviceId device() const;
    [[nodiscard]] bool therapist() const;
    [[nodiscard]] QString homeName() const { return m_homeName; }
    [[nodiscard]] bool needsWelcome() const { return m_problem.isEmpty() && m_children.isEmpty(); }
    [[nodiscard]] QString catalogueNote() const;
    [[nodiscard]] QString reviewNotice() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// False when the store could not be opened: then only `problem` can be shown.
    [[nodiscard]] bool isOpen() const { return m_database != nullptr; }
    [[nodiscard]] usecase::Workplace &workplace() { return *m_workplace; }
    [[nodiscard]] const catalogue::Catalogue &catalogue() const { return m_catalogue; }
    /// Everything known of the current child, read afresh.
    [[nodiscard]] Result<usecase::Family> family();
    /// Today by the phone's clock; the epoch when the clock is not set.
    [[nodiscard]] DayPart today() const;
    /// The sentence for an error, translated.
    [[nodiscard]] QString sentenceFor(const Error &error) const;

    /// Keeping the current child's box (core/usecase/keep_box.h), in this phone's person's name.
    Outcome countBox(const std::map<ItemId, int> &counts);
    Outcome sayPlace(const std::string &place, const std::string &words);
    /// All that is told of each item (core/usecase/box_items.h); nothing when it cannot be read.
    [[nodiscard]] std::vector<usecase::BoxItem> boxItems();
    [[nodiscard]] std::optional<usecase::BoxItem> boxItem(const ItemId &item);
    /// How long it lasts (core/usecase/forecast_box.h); nothing where nothing is known.
    [[nodiscard]] std::optional<usecase::ItemOutlook> outlook(const usecase::BoxItem &item) const;
    /// A full count is worth asking for.
    [[nodiscard]] bool countIsDue();
    /// An adult answers what two phones left open (core/usecase/box_questions.h).
    Outcome answerQuestion(const std::string &question, const std::string &answer);
    /// More of an item: asked for, a step on, counted in (core/usecase/restock.h).
    Outcome askFor(const ItemId &item);
    Outcome moveRequest(const ItemId &item, box::RequestStep step);
    Outcome countIn(const ItemId &item, int pieces);
    /// Tending one item (core/usecase/tend_item.h), in this phone's person's name.
    Outcome noteGone(const ItemId &item, box::ExceptionKind kind, int pieces, Day day);
    Outcome noteBackAgain(const ItemId &item, int pieces);
    Outcome noteOpened(const ItemId &item, const box::PieceId &piece, std::optional<Day> day);
    Outcome noteLeftOpen(const ItemId &item, const box::PieceId &piece);
    Outcome setKeepingLimit(const ItemId &item, std::optional<int> days);
    Outcome noteChecked(const ItemId &item);
    Outcome noteHygiene(const ItemId &item, box::HygieneMark mark);
    Outcome throwAway(const ItemId &item);
    /// What has to be looked for on the floor (core/usecase/search_floor.h).
    [[nodiscard]] usecase::FloorSearch floorSearch();
    Outcome notePiecesFound(const usecase::FoundPieces &found);
    Outcome checkFloor();
    /// What must leave the house (core/usecase/take_out.h); nothing when it cannot be read.
    [[nodiscard]] std::vector<usecase::TakeOut> takeOuts();
    /// Some of it is still here.
    [[nodiscard]] bool somethingMustLeave();
    Outcome confirmTakenOut(const ItemId &item);
    /// What was noted about the box in the last twelve months, newest first.
    [[nodiscard]] std::vector<usecase::BoxNote> boxNotes();

    /// What was noted today, with its way back (core/usecase/noted_today.h, take_back.h).
    [[nodiscard]] std::vector<usecase::Noted> notedToday();
    Outcome takeBack(const std::string &event);
    Outcome putInAgain(const std::string &event);
    /// A family's own way of playing (core/usecase/our_way.h); empty: none. A guest keeps none.
    [[nodiscard]] bool keepsOurWays() const;
    [[nodiscard]] QString ourWay(const ActivityId &activity);
    Outcome keepOurWay(const ActivityId &activity, const std::string &words);
    /// Short notes to oneself (core/usecase/own_notes.h).
    [[nodiscard]] std::vector<play::OwnNote> ownNotes();
    Outcome keepNote(const std::string &words);
    Outcome keepNote(play::NotePhrase phrase);
    Outcome removeNote(const std::string &id);
    Outcome chooseToSend(const std::string &id, bool send);

    /// The seven days to come (core/usecase/plan_week.h), and what an adult says of them.
    [[nodiscard]] Result<usecase::Week> week();
    [[nodiscard]] Result<safety::Admitted> anotherFor(const usecase::Week &week, Day day,
                                                      const std::set<ActivityId> &without);
    Outcome wishForDay(Day day, const play::DayWish &wish);
    Outcome keepWeek(const usecase::Week &week);
    Outcome openWeek(const usecase::Week &week);

    /// Takes away what has been kept for long enough (core/usecase/keep_limits.h).
    void keepLimits();
    /// First run.
    Outcome setUp(const usecase::FirstAnswers &answers);
    /// Tells every screen that the store has changed.
    void announce() { emit changed(); }
    /// Tries again after the reason for `problem` was put right.
    Q_INVOKABLE void openAgain();

signals:
    void childChanged();
    void childrenChanged();
    void problemChanged();
    /// Something was written: rows are to be read again.
    void changed();

private:
    [[nodiscard]] usecase::Tending tending(const ItemId &item) const;
    void openStore();
    void loadCatalogue();
    void readChildren();
    void setProblem(const QString &problem);

    Places m_places;
    std::unique_ptr<Clock> m_clock;
    std::unique_ptr<Entropy> m_entropy;
    catalogue::Catalogue m_catalogue;
    std::unique_ptr<store::Database> m_database;
    std::unique_ptr<usecase::Workplace> m_workplace;
    QString m_child;
    QString m_homeName;
    QStringList m_children;
    QString m_problem;
};

} // namespace lidlark::mobile
