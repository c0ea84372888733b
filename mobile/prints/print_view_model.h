#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/prints/print_job.h"

namespace lidlark::mobile {

/// One print: how it is wanted, its pages, and the file it is kept in.
class PrintViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "lid-list" (print_job.h).
    Q_PROPERTY(QString print READ print WRITE setPrint REQUIRED)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    /// The sheets it can be printed on, and which of them is chosen.
    Q_PROPERTY(QList<QString> papers READ papers NOTIFY changed FINAL)
    Q_PROPERTY(int paper READ paper WRITE setPaper NOTIFY changed FINAL)
    /// Languages it can be written in, named in themselves, and whether each is chosen.
    Q_PROPERTY(QList<QString> languages READ languages NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> chosen READ chosen NOTIFY changed FINAL)
    Q_PROPERTY(int mostLanguages READ mostLanguages NOTIFY changed FINAL)
    /// Of a tally: 0 this week, 1 the next.
    Q_PROPERTY(bool hasWeeks READ hasWeeks NOTIFY changed FINAL)
    Q_PROPERTY(int weeksOn READ weeksOn WRITE setWeeksOn NOTIFY changed FINAL)
    /// Of a build: its id; empty: the newest that is still to be packed.
    Q_PROPERTY(QString build READ build WRITE setBuild NOTIFY changed FINAL)
    /// Of a pack list: item by item, in place of box by box.
    Q_PROPERTY(bool hasOrder READ hasOrder NOTIFY changed FINAL)
    Q_PROPERTY(bool byItem READ byItem WRITE setByItem NOTIFY changed FINAL)
    /// What was played may be put on it; off until somebody of the home says so for this page.
    Q_PROPERTY(bool mayTellPlays READ mayTellPlays NOTIFY changed FINAL)
    Q_PROPERTY(bool tellPlays READ tellPlays WRITE setTellPlays NOTIFY changed FINAL)
    /// Why that cannot be chosen, or the page not be kept; empty: it can.
    Q_PROPERTY(QString notNowReason READ notNowReason NOTIFY changed FINAL)
    /// How the service is reached, on a label.
    Q_PROPERTY(bool hasContact READ hasContact NOTIFY changed FINAL)
    Q_PROPERTY(QString contact READ contact NOTIFY changed FINAL)
    Q_PROPERTY(QString contactProblem READ contactProblem NOTIFY changed FINAL)
    Q_PROPERTY(int pageCount READ pageCount NOTIFY changed FINAL)
    /// Why there are no pages; empty: there are.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    /// Where the file is, or why there is none.
    Q_PROPERTY(QString said READ said NOTIFY saidChanged FINAL)
    /// Empty: the documents of whoever uses the phone.
    Q_PROPERTY(QString folder MEMBER m_folder FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString print() const;
    void setPrint(const QString &name);
    [[nodiscard]] QString name() const;
    [[nodiscard]] QStringList papers() const;
    [[nodiscard]] int paper() const { return static_cast<int>(m_papers.indexOf(m_wish.paper)); }
    void setPaper(int index);
    [[nodiscard]] QStringList languages() const;
    [[nodiscard]] QList<bool> chosen() const;
    [[nodiscard]] int mostLanguages() const { return mobile::mostLanguages(m_wish.what); }
    [[nodiscard]] bool hasWeeks() const { return m_wish.what == Print::Tally; }
    [[nodiscard]] int weeksOn() const { return m_wish.weeksOn; }
    void setWeeksOn(int weeks);
    [[nodiscard]] QString build() const { return m_wish.build; }
    void setBuild(const QString &build);
    [[nodiscard]] bool hasOrder() const { return m_wish.what == Print::PackList; }
    [[nodiscard]] bool byItem() const { return m_wish.byItem; }
    void setByItem(bool byItem);
    [[nodiscard]] bool mayTellPlays() const;
    [[nodiscard]] bool tellPlays() const { return m_wish.tellPlays; }
    void setTellPlays(bool tell);
    [[nodiscard]] QString notNowReason() const;
    [[nodiscard]] bool hasContact() const;
    [[nodiscard]] QString contact() const { return m_contact; }
    [[nodiscard]] QString contactProblem() const { return m_contactProblem; }
    [[nodiscard]] int pageCount() const { return static_cast<int>(m_pages.size()); }
    [[nodiscard]] const PrintPages &pages() const { return m_pages; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString said() const { return m_said; }

    /// Puts a language on the page, or takes it off. The last one stays; where there is no room for
    /// another, it takes the place of the one chosen last.
    Q_INVOKABLE void toggleLanguage(int index);
    /// Keeps how the service is reached. @returns false when it cannot be; contactProblem tells.
    Q_INVOKABLE bool keepContact(const QString &words);
    /// Writes the whole file or none, in place of an earlier one of the same list.
    Q_INVOKABLE bool save();

signals:
    void changed();
    void saidChanged();

private:
    void make();
    void change(const std::function<void()> &what);
    [[nodiscard]] QString fileName() const;

    Household *m_household = nullptr;
    PrintWish m_wish;
    QList<Paper> m_papers;
    PrintPages m_pages;
    QString m_contact;
    QString m_contactProblem;
    QString m_problem;
    QString m_said;
    QString m_folder;
};

} // namespace lidlark::mobile
