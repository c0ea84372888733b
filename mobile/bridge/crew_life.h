#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/crew_members.h"
#include "mobile/bridge/crew_runner.h"

#include "mobile/bridge/crew_errands.h"
#include "mobile/bridge/household.h"

#include <functional>

namespace lidlark::mobile {

class Keychain;

/// The crew of the child whose box is on top, or the table's, as the screens see it: who is in it,
/// how far what was noted here has come, and sharing. Nothing goes out before an adult has said
/// yes.
class CrewLife : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    Q_PROPERTY(lidlark::mobile::CrewMembers *members READ members CONSTANT FINAL)
    /// Whose crew it is: the table's, where somebody packs with the therapist, and no child's.
    /// Always so on a phone that only packs.
    Q_PROPERTY(bool table READ table WRITE setTable NOTIFY changed FINAL)
    /// There is a crew, and this phone is in it.
    Q_PROPERTY(bool inCrew READ inCrew NOTIFY changed FINAL)
    /// "On this phone only", "Shared at 16:10", "3 notes wait on this phone" (job.md S7).
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL)
    /// Why the last sharing was cut short, and what was met on the way, a sentence each.
    Q_PROPERTY(QList<QString> troubles READ troubles NOTIFY changed FINAL)
    /// Where the phones meet; empty: nowhere yet.
    Q_PROPERTY(QString place READ place NOTIFY changed FINAL)
    /// An adult has said yes, and it stands.
    Q_PROPERTY(bool agreed READ agreed NOTIFY changed FINAL)
    /// "Ruth said yes on 11 January."; empty: nobody has.
    Q_PROPERTY(QString agreement READ agreement NOTIFY changed FINAL)
    /// This phone's person may let others in.
    Q_PROPERTY(bool mayLetIn READ mayLetIn NOTIFY changed FINAL)
    /// This phone has a code and waits to be let in.
    Q_PROPERTY(bool joining READ joining NOTIFY changed FINAL)
    /// This phone was in the crew and shares nothing until it is let in by a new code: it was
    /// copied, set back to a backup, or taken out.
    Q_PROPERTY(bool outside READ outside NOTIFY changed FINAL)
    /// The keys lie in a file, for want of a keychain.
    Q_PROPERTY(bool keysInFile READ keysInFile NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    /// @param keychain null: the phone has none. Both outlive this.
    CrewLife(Household *household, std::shared_ptr<Keychain> keychain, QObject *parent = nullptr);

    [[nodiscard]] CrewMembers *members() { return &m_members; }
    [[nodiscard]] bool table() const { return m_table || m_household->withoutBoxes(); }
    void setTable(bool table);
    [[nodiscard]] Whose whose() const;
    [[nodiscard]] bool inCrew() const { return m_inCrew; }
    [[nodiscard]] QString state() const { return m_state; }
    [[nodiscard]] QStringList troubles() const { return m_troubles; }
    [[nodiscard]] QString place() const { return m_place; }
    [[nodiscard]] bool agreed() const { return !m_agreement.isEmpty(); }
    [[nodiscard]] QString agreement() const { return m_agreement; }
    [[nodiscard]] bool mayLetIn() const;
    [[nodiscard]] bool joining() const { return m_joining; }
    [[nodiscard]] bool outside() const;
    [[nodiscard]] bool keysInFile() const { return m_keysInFile; }
    [[nodiscard]] bool busy() const { return m_runner.busy(); }
    [[nodiscard]] Household *household() const { return m_household; }

    /// Runs an errand for @p whose, and takes its answer there (crew_runner.h).
    template <typename Value, typename Then>
    void run(QObject *whose, std::function<Result<Value>(CrewDesk &)> errand, Then then)
    {
        m_runner.run<Value>(deskPlace(), whose, std::move(errand), std::move(then));
        emit busyChanged();
    }

    /// "Yes, share", in the name of whoever writes on this phone.
    Q_INVOKABLE bool agree();
    /// The same in @p person's name, where nobody writes on it yet.
    bool agreeAs(const QString &person);
    /// Nothing more goes out, from this moment on.
    Q_INVOKABLE void withdraw();
    Q_INVOKABLE void shareNow();
    /// By itself: not more often than every quarter of an hour, and not where the phone must spare.
    void shareByItself();
    /// True: nothing is shared by itself now (an empty battery, a network that is paid for).
    void spareWhile(std::function<bool(bool onServer)> sparing) { m_sparing = std::move(sparing); }

    Q_INVOKABLE bool isOwn(const QString &device) const;
    /// Takes another's phone out.
    Q_INVOKABLE void remove(const QString &device);
    /// This phone's own way out. What it holds stays on it.
    Q_INVOKABLE void leave();

    /// Each errand's chance in place of the system's, so that a test can repeat a history.
    void takeChanceFrom(std::function<std::shared_ptr<Entropy>(int errand)> chance)
    {
        m_chance = std::move(chance);
    }
    /// Takes in what an errand said about sharing.
    void take(const Result<ShareReport> &report);
    /// Reads everything anew.
    void look();

signals:
    void changed();
    void busyChanged();
    void failed(const QString &problem);

private:
    [[nodiscard]] CrewDeskPlace deskPlace();
    void lookAt(store::Database &database);
    void readState(store::Database &database);

    static constexpr std::int64_t shareEveryMs = 15 * msPerMinute;

    Household *m_household;
    std::shared_ptr<Keychain> m_keychain;
    CrewMembers m_members;
    CrewRunner m_runner;
    std::function<bool(bool)> m_sparing;
    std::function<std::shared_ptr<Entropy>(int)> m_chance;
    int m_errands = 0;
    std::int64_t m_triedMs = 0;
    bool m_table = false;
    bool m_inCrew = false;
    bool m_shares = false; ///< In the crew of any box of the store, or of the table.
    bool m_joining = false;
    bool m_outside = false;
    DeviceId m_setBack; ///< The id under which the last sharing found it; empty: it did not.
    bool m_keysInFile = false;
    QString m_state;
    QString m_place;
    QString m_agreement;
    QStringList m_troubles;
};

} // namespace lidlark::mobile
