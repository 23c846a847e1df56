import { expect, it } from 'vitest';
import { anyWrong, ProblemList } from '../../src/entry/problems';
import { missing, told, wrong } from './support/told';

it('of several problems of a field the first one found is told', () => {
  const problems = new ProblemList();
  problems.missing('one', 'Still to come');
  problems.wrong('one', 'Later');
  problems.wrong('other', 'First');
  problems.missing('other', 'Later');
  expect(told(problems.all)).toEqual({ one: missing('Still to come'), other: wrong('First') });
});

it('what is only missing is not wrong', () => {
  const problems = new ProblemList();
  expect(anyWrong(problems.all)).toBe(false);
  problems.missing('one', 'Still to come');
  expect(anyWrong(problems.all)).toBe(false);
  problems.wrong('other', 'Not a number');
  expect(anyWrong(problems.all)).toBe(true);
});
