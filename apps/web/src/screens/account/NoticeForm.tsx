import { noticeLetters, type NoticeSetting } from "@cornerway/schema";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useNoticeSetting, useSetNotices } from "../../data/notice.ts";

/** Whether what concerns this person is told by letter as well. */
export function NoticeForm() {
  const setting = useNoticeSetting();
  const set = useSetNotices();
  return (
    <section className="account-form" aria-labelledby="account-notices">
      <h2 className="caption" id="account-notices">
        Letters
      </h2>
      <PersonField label="Be told by letter of what concerns you">
        {(bound) => (
          <select
            {...bound}
            value={setting.data?.letters ?? "none"}
            disabled={setting.data === undefined || set.isPending}
            onChange={({ target }) => {
              const letters = noticeLetters.find((each) => each === target.value);
              if (letters !== undefined) set.mutate({ letters });
            }}
          >
            {noticeLetters.map((letters) => (
              <option key={letters} value={letters}>
                {letterWords[letters]}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <p>
        A letter says in few words what happened and where, never what anyone wrote. It holds the head of each record:
        kept, it shows later whether the record was altered.
      </p>
      <Refused error={set.error ?? setting.error} />
    </section>
  );
}

const letterWords: Record<NoticeSetting["letters"], string> = {
  none: "By no letter",
  "at once": "At once, within a minute",
  daily: "Once a day",
};
