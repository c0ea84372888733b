#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/catalogue/catalogue.h"
#include "core/usecase/box_items.h"
#include "core/usecase/box_notes.h"
#include "core/usecase/box_questions.h"
#include "core/usecase/families.h"
#include "core/usecase/family.h"
#include "core/usecase/forecast_box.h"
#include "core/usecase/items_around.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/plan_week.h"
#include "core/usecase/restock.h"
#include "core/usecase/search_floor.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/suggest_today.h"
#include "core/usecase/take_out.h"
#include "core/usecase/tend_item.h"
#include "core/usecase/workplace.h"

#include "mobile/bridge/phone_children.h"

#include <map>
#include <memory>
#include <optional>

namespace lidlark::mobile {

/// All a screen may ask of the core: the store of the family on the table, the catalogue, and whose
/// box it is. A phone may hold several families, a store each: all that is asked is asked of one.
/// Made by `main` (or a test) before the first screen.
class Household : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    /// Alias of the child whose box the screens are about. Empty: none yet.
    Q_PROPERTY(QString child READ child WRITE setChild NOTIFY childChanged FINAL)
    /// The same, with the home beside it where two families of the phone have one alias.
    Q_PROPERTY(QString childTitle READ childTitle NOTIFY childrenChanged FINAL)
    /// Everybody with a box on this phone, of whatever family.
    Q_PROPERTY(lidlark::mobile::PhoneChildren *phoneChildren READ phoneChildren CONSTANT FINAL)
    /// More than one box, more than one family's.
    Q_PROPERTY(bool several READ several NOTIFY childrenChanged FINAL)
    /// Whose boxes leave the phone with the family on the table: "Fin, Isla".
    Q_PROPERTY(QString familyNames READ familyNames NOTIFY childrenChanged FINAL)
    Q_PROPERTY(bool severalFamilies READ severalFamilies NOTIFY childrenChanged FINAL)
    /// A line for each family's file that cannot be read.
    Q_PROPERTY(QList<QString> unreadable READ unreadable NOTIFY childrenChanged FINAL)
    /// "Kit": who was taken off the phone since it was opened, one text a family.
    Q_PROPERTY(QList<QString> takenOff READ takenOff NOTIFY childrenChanged FINAL)
    /// Who writes on this phone; set it to hand the phone to another of `writers`.
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY childrenChanged FINAL)
    /// Who may write on this phone, by name.
    Q_PROPERTY(QList<QString> writers READ writers NOTIFY childrenChanged FINAL)
    /// The language in force, "ur"; set it and `person` reads in it from now on.
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged FINAL)
    /// Its words are set in Naskh.
    Q_PROPERTY(bool arabicScript READ arabicScript NOTIFY languageChanged FINAL)
    Q_PROPERTY(QString homeName READ homeName NOTIFY childrenChanged FINAL)
    /// The phone of the one who packs the boxes.
    Q_PROPERTY(bool therapist READ therapist NOTIFY childrenChanged FINAL)
    /// Somebody who was asked in for a few days: plays and puts back, and sees no history.
    Q_PROPERTY(bool guest READ guest NOTIFY childrenChanged FINAL)
    /// A guest's last day, as words; empty: no end.
    Q_PROPERTY(QString guestUntil READ guestUntil NOTIFY childrenChanged FINAL)
    /// No child's box lies on this phone: it packs at somebody else's table.
    Q_PROPERTY(bool packsOnly READ packsOnly NOTIFY childrenChanged FINAL)
    /// A therapist's phone, or that of who packs with her, on which no child's box lies.
    Q_PROPERTY(bool withoutBoxes READ withoutBoxes NOTIFY childrenChanged FINAL)
    /// The first run is still to come.
    Q_PROPERTY(bool needsWelcome READ needsWelcome NOTIFY childrenChanged FINAL)
    /// One sentence why nothing can be done (torn store, clock in 1970 ...), or empty.
    /// What of the catalogue could not be read; empty: all could.
    Q_PROPERTY(QString catalogueNote READ catalogueNote NOTIFY languageChanged FINAL)
    /// Who has checked the words a family reads; empty: a clinician has, all of them.
    Q_PROPERTY(QString reviewNotice READ reviewNotice NOTIFY languageChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged FINAL)

public:
    /// Where things are: the phone's first store, beside which further families lie
    /// (core/store/family_folder.h). Catalogue folders may be resources.
    struct Places {
        QString store;
        QString catalogue = QStringLiteral(":/lidlark/catalogue");
        QString language = {}; ///< For this run, whoever reads; empty: as they have said.
    };

    Household(const Places &places, std::unique_ptr<Clock> clock, std::unique_ptr<Entropy> entropy,
              QObject *parent = nullptr);
    ~Household() override;

    [[nodiscard]] QString child() const { return m_child; }
    void setChild(const QString &alias);
    [[nodiscard]] QString childTitle() const { return m_phoneChildren.pickedLabel(); }
    [[nodiscard]] PhoneChildren *phoneChildren() { return &m_phoneChildren; }
    [[nodiscard]] bool several() const { return m_phoneChildren.rowCount() > 1; }
    [[nodiscard]] QString familyNames() const { return m_children.join(QStringLiteral(", ")); }
    [[nodiscard]] bool severalFamilies() const;
    [[nodiscard]] QStringList unreadable() const;
    [[nodiscard]] QStringList takenOff() const;
    [[nodiscard]] QString person() const;
    void setPerson(const QString &person);
    [[nodiscard]] QStringList writers() const;
    [[nodiscard]] QString language() const { return m_language; }
    void setLanguage(const QString &language);
    [[nodiscard]] bool arabicScript() const;
    [[nodiscard]] DeviceId device() const;
    [[nodiscard]] bool therapist() const;
    [[nodiscard]] bool guest() const;
    [[nodiscard]] QString guestUntil() const;
    /// A guest's invitation is over: only that can be shown.
    Q_INVOKABLE bool accessEnded() const;
    [[nodiscard]] QString homeName() const { return m_homeName; }
    [[nodiscard]] bool packsOnly() const { return m_children.isEmpty() && m_packsForAnother; }
    [[nodiscard]] bool withoutBoxes() const { return m_children.isEmpty() && therapist(); }
    [[nodiscard]] bool needsWelcome() const
    {
        return m_problem.isEmpty() && m_children.isEmpty() && !therapist();
    }
    [[nodiscard]] QString catalogueNote() const;
    [[nodiscard]] QString reviewNotice() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// False when the store could not be opened: then only `problem` can be shown.
    [[nodiscard]] bool isOpen() const { return m_workplace != nullptr; }
    [[nodiscard]] usecase::Workplace &workplace() { return *m_workplace; }
    /// Where the phone keeps what belongs to it and to no family; null when it cannot be opened.
    [[nodiscard]] store::Database *phone() const { return m_phone.get(); }
    /// The file of the family on the table.
    [[nodiscard]] const std::string &storeFile() const { return m_family; }
    [[nodiscard]] const store::FamilyFolder &families() const { return m_folder; }
    [[nodiscard]] std::vector<std::string> namesOnPhone() const
    {
        return usecase::namesIn(m_families);
    }
    [[nodiscard]] const Clock &clock() const { return *m_clock; }
    /// In the language in force, with what the therapist wrote for this child's box. One that was
    /// read stays as long as this, so that a pointer to an entry outlives a change.
    [[nodiscard]] const catalogue::Catalogue &catalogue() const { return *m_catalogue; }
    /// The same in another language; empty: in English, and what is built in alone.
    [[nodiscard]] const catalogue::Catalogue &catalogueIn(const QString &language);
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
    /// How each thing of the catalogue stands (core/usecase/items_around.h).
    [[nodiscard]] std::vector<usecase::ItemStanding>
    itemsAround(const usecase::TodayMenu &today) const;
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
    /// Nobody has said who lives in this phone's home; the first answers about it.
    [[nodiscard]] Q_INVOKABLE bool homeToBeTold();
    Outcome tellHome(const usecase::FirstAnswers &answers);
    /// First run of somebody who packs boxes for children.
    Outcome setUpClinic(const QString &person);
    /// A further family's first run, in a store of its own; its box is on the table then.
    Outcome addFamily(const usecase::FirstAnswers &answers);
    /// Another child, and with it another family where it is one. @returns false with `failed` when
    /// its store cannot be opened: the one on the table stays.
    Q_INVOKABLE bool chooseChild(const QString &family, const QString &alias);
    /// Takes the family on the table off the phone, until the app is closed.
    Q_INVOKABLE bool takeOff();
    /// @param index among `takenOff`.
    Q_INVOKABLE bool bringBack(int index);
    /// Tells every screen that the store has changed.
    void announce() { emit changed(); }
    /// A box was handed over: whose boxes this phone knows is read anew.
    void countBoxes();
    /// Tries again after the reason for `problem` was put right.
    Q_INVOKABLE void openAgain();

signals:
    void childChanged();
    void childrenChanged();
    void problemChanged();
    void failed(const QString &problem);
    /// The family on the table leaves the phone: nobody may work in its store any more.
    void leaving();
    /// Every word is another now.
    void languageChanged();
    /// Something was written: rows are to be read again.
    void changed();

private:
    [[nodiscard]] usecase::Tending tending(const ItemId &item) const;
    void openStore();
    /// The family that was on the table last, or the first that can be opened.
    Outcome openSomeFamily();
    Outcome openFamily(const std::string &file);
    void close();
    /// For this run, or by whoever writes on the phone; empty: not said.
    [[nodiscard]] QString languageSaid() const;
    void speakAsWanted();
    void readChildren();
    void lookAround();
    [[nodiscard]] QString lastFamily() const;
    void keepWhoseFamily();
    bool report(const Outcome &outcome);
    void setProblem(const QString &problem);

    static constexpr auto childKey = "screen.child"; ///< Kept in each store: whose box it was.

    Places m_places;
    std::unique_ptr<Clock> m_clock;
    std::unique_ptr<Entropy> m_entropy;
    store::FamilyFolder m_folder;
    std::unique_ptr<store::Database> m_phone;   ///< The first store.
    std::unique_ptr<store::Database> m_further; ///< Open while its family is on the table.
    std::map<QString, catalogue::Catalogue> m_catalogues; ///< As they were needed (catalogueIn).
    const catalogue::Catalogue *m_catalogue = nullptr;
    QString m_language;
    std::unique_ptr<usecase::Workplace> m_workplace;
    std::string m_family; ///< The file on the table.
    std::vector<usecase::FamilyOnPhone> m_families;
    struct TakenOff {
        std::string file;
        QStringList children;
    };
    std::vector<TakenOff> m_takenOff;
    PhoneChildren m_phoneChildren;
    QString m_child;
    QString m_homeName;
    QStringList m_children;
    bool m_packsForAnother = false; ///< core/usecase/packs_for_another.h
    QString m_problem;
};

} // namespace lidlark::mobile
