#pragma once

#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/own_desk.h"
#include "own_choice.h"
#include "own_lines.h"
#include "own_things.h"

#include <array>

namespace lidlark::mobile {

/// An activity of the therapist's own while it is written. What is typed is held as one goes, and
/// kept when the page is left; what is still to mend is said part by part, a moment after the last
/// touch.
class OwnWritingViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString entry READ entry WRITE setEntry REQUIRED)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY edited FINAL)
    Q_PROPERTY(QString invite READ invite WRITE setInvite NOTIFY edited FINAL)
    Q_PROPERTY(QString adultLine READ adultLine WRITE setAdultLine NOTIFY edited FINAL)
    Q_PROPERTY(QString floorReason READ floorReason WRITE setFloorReason NOTIFY edited FINAL)
    Q_PROPERTY(QString oneHand READ oneHand WRITE setOneHand NOTIFY edited FINAL)
    Q_PROPERTY(QString seated READ seated WRITE setSeated NOTIFY edited FINAL)
    Q_PROPERTY(int minutesOut READ minutesOut WRITE setMinutesOut NOTIFY edited FINAL)
    Q_PROPERTY(int minutesPlay READ minutesPlay WRITE setMinutesPlay NOTIFY edited FINAL)
    Q_PROPERTY(int minutesBack READ minutesBack WRITE setMinutesBack NOTIFY edited FINAL)
    /// Half years from two years on; 0: nobody has said.
    Q_PROPERTY(int halfYears READ halfYears WRITE setHalfYears NOTIFY edited FINAL)
    Q_PROPERTY(int earliestHalfYears READ earliestHalfYears NOTIFY edited FINAL)
    Q_PROPERTY(QString ageWords READ ageWords NOTIFY edited FINAL)
    /// What it is played with brings these, a line each; nobody can take them off.
    Q_PROPERTY(QList<QString> givenCautions READ givenCautions NOTIFY edited FINAL)
    Q_PROPERTY(bool usesBox READ usesBox NOTIFY edited FINAL)
    /// Something is cut or torn, and small pieces come of it.
    Q_PROPERTY(bool divides READ divides NOTIFY edited FINAL)
    Q_PROPERTY(bool smallPieces READ smallPieces WRITE setSmallPieces NOTIFY edited FINAL)

    Q_PROPERTY(lidlark::mobile::OwnChoice *mainSkills READ mainSkills CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *alsoSkills READ alsoSkills CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *closeness READ closeness CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *positions READ positions CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *space READ space CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *mess READ mess CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *sound READ sound CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *energy READ energy CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *hands READ hands CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnChoice *moreCautions READ moreCautions CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnThings *things READ things CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *steps READ steps CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *easier READ easier CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *harder READ harder CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *watchFor READ watchFor CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *stopWhen READ stopWhen CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *sayLines READ sayLines CONSTANT FINAL)
    Q_PROPERTY(lidlark::mobile::OwnLines *putBack READ putBack CONSTANT FINAL)
    Q_PROPERTY(QList<QString> levers READ levers CONSTANT FINAL)

    /// What stands in each `Part`, in a line; empty: nothing yet.
    Q_PROPERTY(QList<QString> inShort READ inShort NOTIFY edited FINAL)
    /// What is to mend in each `Part`, sentences in lines; empty: nothing.
    Q_PROPERTY(QList<QString> toMend READ toMend NOTIFY lookedOver FINAL)
    Q_PROPERTY(int partsToMend READ partsToMend NOTIFY lookedOver FINAL)
    Q_PROPERTY(bool signedOff READ isSignedOff NOTIFY lookedOver FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY lookedOver FINAL)

public:
    enum Part { Words, Skills, Things, Time, Way, Steps, Gradings, Cautions, Home, PartCount };
    Q_ENUM(Part)

    explicit OwnWritingViewModel(QObject *parent = nullptr);
    ~OwnWritingViewModel() override;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString entry() const { return m_entry; }
    void setEntry(const QString &entry);

    [[nodiscard]] QString name() const;
    void setName(const QString &words);
    [[nodiscard]] QString invite() const;
    void setInvite(const QString &words);
    [[nodiscard]] QString adultLine() const;
    void setAdultLine(const QString &words);
    [[nodiscard]] QString floorReason() const;
    void setFloorReason(const QString &words);
    [[nodiscard]] QString oneHand() const;
    void setOneHand(const QString &words);
    [[nodiscard]] QString seated() const;
    void setSeated(const QString &words);
    [[nodiscard]] int minutesOut() const { return m_draft.minutes.out; }
    void setMinutesOut(int minutes);
    [[nodiscard]] int minutesPlay() const { return m_draft.minutes.play; }
    void setMinutesPlay(int minutes);
    [[nodiscard]] int minutesBack() const { return m_draft.minutes.back; }
    void setMinutesBack(int minutes);
    [[nodiscard]] int halfYears() const;
    void setHalfYears(int halfYears);
    [[nodiscard]] int earliestHalfYears() const;
    [[nodiscard]] QString ageWords() const;
    [[nodiscard]] QStringList givenCautions() const;
    [[nodiscard]] bool usesBox() const { return m_draft.usesBox(); }
    [[nodiscard]] bool divides() const;
    [[nodiscard]] bool smallPieces() const;
    void setSmallPieces(bool small);

    [[nodiscard]] OwnChoice *mainSkills() { return &m_mainSkills; }
    [[nodiscard]] OwnChoice *alsoSkills() { return &m_alsoSkills; }
    [[nodiscard]] OwnChoice *closeness() { return &m_closeness; }
    [[nodiscard]] OwnChoice *positions() { return &m_positions; }
    [[nodiscard]] OwnChoice *space() { return &m_space; }
    [[nodiscard]] OwnChoice *mess() { return &m_mess; }
    [[nodiscard]] OwnChoice *sound() { return &m_sound; }
    [[nodiscard]] OwnChoice *energy() { return &m_energy; }
    [[nodiscard]] OwnChoice *hands() { return &m_hands; }
    [[nodiscard]] OwnChoice *moreCautions() { return &m_moreCautions; }
    [[nodiscard]] OwnThings *things() { return &m_things; }
    [[nodiscard]] OwnLines *steps() { return &m_steps; }
    [[nodiscard]] OwnLines *easier() { return &m_easier; }
    [[nodiscard]] OwnLines *harder() { return &m_harder; }
    [[nodiscard]] OwnLines *watchFor() { return &m_watchFor; }
    [[nodiscard]] OwnLines *stopWhen() { return &m_stopWhen; }
    [[nodiscard]] OwnLines *sayLines() { return &m_say; }
    [[nodiscard]] OwnLines *putBack() { return &m_putBack; }
    [[nodiscard]] static QStringList levers();
    [[nodiscard]] QStringList inShort() const;
    [[nodiscard]] QStringList toMend() const { return m_toMend; }
    [[nodiscard]] int partsToMend() const;
    [[nodiscard]] bool isSignedOff() const { return m_signedOff; }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// A line for each thing that is counted home.
    Q_INVOKABLE void suggestPutBack();
    /// What was typed is the therapist's draft now; also when the page goes.
    Q_INVOKABLE void keep();
    /// Looks it over at once. @returns whether nothing is to mend and it may go to boxes.
    Q_INVOKABLE bool makeReady();
    /// Off the desk. @returns whether it is.
    Q_INVOKABLE bool throwAway();

signals:
    void edited();
    void lookedOver();

private:
    void load();
    void showDraft();
    void askChoices();
    void askSetting();
    /// Something was touched: it is held, and looked over a moment later.
    void touch();
    void takeIn();
    void write(std::string &field, const QString &words);
    void lookOver();
    void tell(const usecase::OwnFindings &findings);
    [[nodiscard]] catalogue::TagSet givenTags() const;
    [[nodiscard]] QString sentenceFor(const catalogue::LintFinding &finding) const;

    Household *m_household = nullptr;
    QString m_entry;
    catalogue::Activity m_draft;
    catalogue::TagSet m_added; ///< Cautions that its writer added.
    OwnChoice m_mainSkills, m_alsoSkills, m_closeness, m_positions, m_space, m_mess, m_sound,
        m_energy, m_hands, m_moreCautions;
    OwnThings m_things;
    OwnLines m_steps, m_easier, m_harder, m_watchFor, m_stopWhen, m_say, m_putBack;
    QTimer m_soon;
    bool m_loading = false;
    bool m_signedOff = false;
    QStringList m_toMend;
    QString m_problem;
};

} // namespace lidlark::mobile
