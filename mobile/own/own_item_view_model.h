#pragma once

#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/own_item_desk.h"
#include "own_choice.h"
#include "own_lines.h"
#include "own_numbers.h"
#include "own_solids.h"

#include <array>

namespace lidlark::mobile {

/// A thing of the therapist's own, or a built-in one that measures otherwise, while it is written.
/// What is typed is held as one goes, a number that is none too; what follows from it is said at
/// once, what is still to mend part by part, a moment after the last touch.
class OwnItemViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString entry READ entry WRITE setEntry REQUIRED)
    /// It is a built-in thing: words, picture and its place in a box stay ours.
    Q_PROPERTY(bool ours READ isOurs NOTIFY edited FINAL)
    Q_PROPERTY(QString title READ title NOTIFY edited FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY edited FINAL)
    Q_PROPERTY(QString one READ one WRITE setOne NOTIFY edited FINAL)
    Q_PROPERTY(QString drawing READ drawing NOTIFY edited FINAL)
    Q_PROPERTY(QString lookFor READ lookFor WRITE setLookFor NOTIFY edited FINAL)
    Q_PROPERTY(int lidCount READ lidCount WRITE setLidCount NOTIFY edited FINAL)
    /// The home lends it: nothing of it is counted or bought.
    Q_PROPERTY(bool lent READ isLent NOTIFY edited FINAL)

    Q_PROPERTY(lidlark::mobile::OwnSolids *whole READ whole CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnSolids *worn READ worn CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnSolids *comesOff READ comesOff CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnNumbers *cord READ cord CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnNumbers *hollow READ hollow CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnNumbers *film READ film CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnNumbers *keeping READ keeping CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnNumbers *use READ use CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *rolls READ rolls CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *hollowIs READ hollowIs CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *filmHas READ filmHas CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *allergens READ allergens CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *holds READ holds CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *traits READ traits CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *cautions READ cautions CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *washing READ washing CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *looking READ looking CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *place READ place CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *comesBack READ comesBack CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *care READ care CONSTANT FINAL)

    /// What follows from the sizes, reckoned; what has to be minded in all; from which age on.
    Q_PROPERTY(QString follows READ follows NOTIFY edited FINAL)
    Q_PROPERTY(QString minded READ minded NOTIFY edited FINAL)
    Q_PROPERTY(QString ageWords READ ageWords NOTIFY edited FINAL)
    /// What is to mend in each `Part`, sentences in lines; empty: nothing.
    Q_PROPERTY(QList<QString> toMend READ toMend NOTIFY lookedOver FINAL)
    Q_PROPERTY(int partsToMend READ partsToMend NOTIFY lookedOver FINAL)
    /// Nothing is to mend, and what it changes is shown: it may be kept for boxes.
    Q_PROPERTY(bool weighed READ isWeighed NOTIFY lookedOver FINAL)
    Q_PROPERTY(bool signedOff READ isSignedOff NOTIFY lookedOver FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY lookedOver FINAL)

public:
    enum Part { Names, Sizes, Materials, Keeping, Place, PartCount };
    Q_ENUM(Part)

    explicit OwnItemViewModel(QObject *parent = nullptr);
    ~OwnItemViewModel() override;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString entry() const { return m_entry; }
    void setEntry(const QString &entry);
    [[nodiscard]] bool isOurs() const { return m_ours != nullptr; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString name() const;
    void setName(const QString &words);
    [[nodiscard]] QString one() const;
    void setOne(const QString &words);
    [[nodiscard]] QString drawing() const;
    [[nodiscard]] QString lookFor() const;
    void setLookFor(const QString &words);
    [[nodiscard]] int lidCount() const { return kind().lidCount; }
    void setLidCount(int pieces);
    [[nodiscard]] bool isLent() const { return kind().source == catalogue::Source::Home; }

    [[nodiscard]] OwnSolids *whole() { return &m_whole; }
    [[nodiscard]] OwnSolids *worn() { return &m_worn; }
    [[nodiscard]] OwnSolids *comesOff() { return &m_comesOff; }
    [[nodiscard]] OwnNumbers *cord() { return &m_cord; }
    [[nodiscard]] OwnNumbers *hollow() { return &m_hollow; }
    [[nodiscard]] OwnNumbers *film() { return &m_film; }
    [[nodiscard]] OwnNumbers *keeping() { return &m_keeping; }
    [[nodiscard]] OwnNumbers *use() { return &m_use; }
    [[nodiscard]] OwnChoice *rolls() { return &m_rolls; }
    [[nodiscard]] OwnChoice *hollowIs() { return &m_hollowIs; }
    [[nodiscard]] OwnChoice *filmHas() { return &m_filmHas; }
    [[nodiscard]] OwnChoice *allergens() { return &m_allergens; }
    [[nodiscard]] OwnChoice *holds() { return &m_holds; }
    [[nodiscard]] OwnChoice *traits() { return &m_traits; }
    [[nodiscard]] OwnChoice *cautions() { return &m_cautions; }
    [[nodiscard]] OwnChoice *washing() { return &m_washing; }
    [[nodiscard]] OwnChoice *looking() { return &m_looking; }
    [[nodiscard]] OwnChoice *place() { return &m_place; }
    [[nodiscard]] OwnChoice *comesBack() { return &m_comesBack; }
    [[nodiscard]] OwnLines *care() { return &m_care; }

    [[nodiscard]] QString follows() const;
    [[nodiscard]] QString minded() const;
    [[nodiscard]] QString ageWords() const;
    [[nodiscard]] QStringList toMend() const { return m_toMend; }
    [[nodiscard]] int partsToMend() const;
    [[nodiscard]] bool isWeighed() const { return m_weighed; }
    [[nodiscard]] bool isSignedOff() const { return m_signedOff; }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Things of ours whose name holds @p words, by id: any of their pictures may stand for it.
    Q_INVOKABLE QStringList pictures(const QString &words) const;
    Q_INVOKABLE QString nameOf(const QString &itemId) const;
    Q_INVOKABLE QString drawingOf(const QString &itemId) const;
    /// Empty: a plain box.
    Q_INVOKABLE void draw(const QString &itemId);
    /// What was typed is the therapist's draft now; also when the page goes.
    Q_INVOKABLE void keep();
    /// Looks it over at once. @returns whether nothing is to mend: what it changes may be shown.
    Q_INVOKABLE bool weigh();
    /// Ready for boxes. @returns whether it is.
    Q_INVOKABLE bool signOff();
    /// Off the desk. @returns whether it is.
    Q_INVOKABLE bool throwAway();

signals:
    void edited();
    void lookedOver();

private:
    [[nodiscard]] const catalogue::ItemKind &kind() const { return m_draft.kind; }
    [[nodiscard]] catalogue::ItemKind &kind() { return m_draft.kind; }
    void listen();
    void load();
    void showDraft();
    void showMeasures();
    void askNumbers();
    void askMeasures();
    void askMaterials();
    void askKeeping();
    /// Something was touched: it is held, and looked over a moment later.
    void touch();
    void takeIn();
    void takeInMeasures();
    void takeInKeeping();
    [[nodiscard]] bool hasUnreadSizes() const;
    [[nodiscard]] bool isUnread() const;
    /// All numbers as they are typed, where one of them is none; else empty.
    [[nodiscard]] QString typed() const;
    void showTyped(const QString &typed);
    void write(std::string &field, const QString &words);
    void lookOver();
    void tell(const usecase::OwnFindings &findings);
    void addToMend(Part part, const QString &sentence);
    /// What nobody takes off: measured, of an allergen, or ours.
    [[nodiscard]] catalogue::TagSet givenTags() const;

    Household *m_household = nullptr;
    QString m_entry;
    const catalogue::ItemKind *m_ours = nullptr;
    OwnItemDraft m_draft;
    catalogue::TagSet m_added; ///< Cautions that its writer added.
    bool m_stiff = true;
    bool m_drawstring = false;
    OwnSolids m_whole, m_worn, m_comesOff;
    OwnNumbers m_cord, m_hollow, m_film, m_keeping, m_use;
    OwnChoice m_rolls, m_hollowIs, m_filmHas, m_allergens, m_holds, m_traits, m_cautions, m_washing,
        m_looking, m_place, m_comesBack;
    OwnLines m_care;
    QTimer m_soon;
    bool m_loading = false;
    bool m_weighed = false;
    bool m_signedOff = false;
    QStringList m_toMend;
    QString m_problem;
};

} // namespace lidlark::mobile
